"""Which photographs are made of each scene, and what each does to the light."""

# name: settings. exposure: factor. quality: of the JPEG. blurPx: standard deviation of the defocus. gains: red, green, blue.
CLEAN = {"clean": {}}
PERTURBED = {
    "exposure-half": {"exposure": 0.5}, "jpeg-70": {"quality": 70}, "blur-1": {"blurPx": 1}, "contrast": {"contrast": True},
    "exposure-double": {"exposure": 2}, "noise": {"noise": True}, "display-p3": {"displayP3": True}, "blur-2": {"blurPx": 2},
    "jpeg-80": {"quality": 80}, "sharpened": {"sharpened": True}, "exposure-quadruple": {"exposure": 4},
    "white-balance": {"gains": (1.15, 1, 0.85)}, "jpeg-95": {"quality": 95}, "pair": {},
}
PAIR = {"pair-dark": {"exposure": 0.35}, "pair-bright": {"exposure": 2}}
EACH = 3
# What spoils a good scene of the photo checks, and what must not.
SPOILED = {"out-of-focus": {"blurPx": 5}, "clipped": {"exposure": 4}, "too-dark": {"exposure": 0.06}, "too-few-px": {"pxPerMm": 3.2}}
HARMLESS = {"jpeg-80": {"quality": 80}, "noise": {"noise": True}, "exposure-half": {"exposure": 0.5}}


def perturbed(number):
    """Three of the perturbations for the scene of that number, so that all are equally frequent over a part."""
    names = list(PERTURBED)
    chosen = [names[(EACH * (number - 1) + k) % len(names)] for k in range(EACH)]
    found = {name: PERTURBED[name] for name in chosen if name != "pair"}
    return {**found, **(PAIR if "pair" in chosen else {})}


def variants_of(truth):
    """The photographs to make of a scene: {name: settings}, and {name: faults these add}."""
    part, number = truth["part"], int(truth["scene"].split("-")[-1])
    if part in ("turned", "waves"):
        return CLEAN, {}
    if part != "faults":
        return {**CLEAN, **perturbed(number)}, {}
    if truth["faults"]:
        return {**CLEAN, "jpeg-80": HARMLESS["jpeg-80"]}, {}
    focus = {"out-of-focus": {"blurPx": 4 + number % 3}}
    return {**CLEAN, **HARMLESS, **SPOILED, **focus}, {name: [name] for name in SPOILED}
