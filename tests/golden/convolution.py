"""Writes convolution.onnx, a tiny network (3 × 3 convolution, then the positive part), and convolution.json, what
SciPy makes of the same weights and picture.

Run with Debian's python3-onnx and python3-scipy: /usr/bin/python3 tests/golden/convolution.py
"""

import json
from pathlib import Path

import numpy as np
import onnx
import scipy
from onnx import TensorProto, helper, numpy_helper
from scipy.signal import correlate2d

chance = np.random.default_rng(3)
picture = chance.random((9, 11), dtype=np.float32).round(4)
weights = chance.normal(0, 0.4, (2, 1, 3, 3)).astype(np.float32).round(4)
bias = np.array([0.1, -0.2], np.float32)

graph = helper.make_graph(
    [
        helper.make_node("Conv", ["picture", "weights", "bias"], ["sum"], kernel_shape=[3, 3], pads=[1, 1, 1, 1]),
        helper.make_node("Relu", ["sum"], ["features"]),
    ],
    "convolution",
    [helper.make_tensor_value_info("picture", TensorProto.FLOAT, [1, 1, "height", "width"])],
    [helper.make_tensor_value_info("features", TensorProto.FLOAT, [1, 2, "height", "width"])],
    [numpy_helper.from_array(weights, "weights"), numpy_helper.from_array(bias, "bias")],
)
model = helper.make_model(graph, opset_imports=[helper.make_opsetid("", 13)], producer_name="glintgrade tests")
model.ir_version = 7
onnx.checker.check_model(model)
here = Path(__file__)
onnx.save(model, str(here.with_suffix(".onnx")))

sums = [correlate2d(picture, kernel[0], mode="same") + offset for kernel, offset in zip(weights, bias)]
golden = {
    "source": "tests/golden/convolution.py",
    "tool": "SciPy (Debian python3-scipy)",
    "version": scipy.__version__,
    "tolerance": 1e-5,
    "shape": [1, 1, 9, 11],
    "picture": [round(float(value), 4) for value in picture.ravel()],
    "features": [round(float(value), 6) for value in np.maximum(np.stack(sums), 0).ravel()],
}
here.with_suffix(".json").write_text(json.dumps(golden, separators=(",", ":")) + "\n")
