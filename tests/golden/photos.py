"""Writes turned.jpg: a scene of four colors stored lying on its side, as phones do, in a progressive JPEG.

Upright it is 240 wide and 320 high: red upper left, green upper right, blue lower left, white lower right.
Run with Debian's python3-pil: /usr/bin/python3 tests/golden/photos.py
"""

from pathlib import Path

from PIL import Image

ORIENTATION, STORED_A_QUARTER_TURN_LEFT = 0x0112, 6

scene = Image.new("RGB", (240, 320), (255, 255, 255))
scene.paste((200, 30, 30), (0, 0, 120, 160))
scene.paste((30, 160, 40), (120, 0, 240, 160))
scene.paste((40, 50, 190), (0, 160, 120, 320))

exif = Image.Exif()
exif[ORIENTATION] = STORED_A_QUARTER_TURN_LEFT
stored = scene.transpose(Image.Transpose.ROTATE_90)
stored.save(Path(__file__).with_name("turned.jpg"), quality=95, progressive=True, exif=exif)
