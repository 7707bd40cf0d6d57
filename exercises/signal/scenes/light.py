"""Light on a relief: from the side, from the sky, in the creases, and back as an image."""

from dataclasses import dataclass

import numpy as np
from PIL import Image

from exercises.signal.arrays import Mask, Plane
from exercises.signal.scenes.canvas import Colour, blurred, tint
from exercises.signal.scenes.relief import FAR, Relief
from exercises.signal.scenes.texture import clouded


@dataclass(frozen=True, slots=True)
class Light:
    """``towards`` the lamp: right, down, to the viewer. ``fill`` is the light of all around.

    back   a rim of light from behind
    cast   how many points far shadows are looked for; 0: none
    """

    towards: tuple[float, float, float]
    colour: Colour = (1, 1, 1)
    fill: Colour = (0.3, 0.32, 0.36)
    back: Colour = (0, 0, 0)
    cast: float = 0.0


def lit(relief: Relief, light: Light, *, halve: bool = True, seed: int = 3) -> Image.Image:
    """The relief as an RGBA image, clear where nothing is; half its scale if ``halve``."""
    height = _roughened(relief, seed)
    there: Mask = relief.height > FAR
    across, down, facing = _normals(height, relief.scale)
    towards = tint(light.towards) / np.linalg.norm(tint(light.towards))
    straight = across * towards[0] + down * towards[1] + facing * towards[2]
    direct = np.clip(straight * 0.9 + 0.1, 0, 1)
    if light.cast:
        direct *= _unshadowed(height, towards, light.cast * relief.scale, relief.scale)
    creases = _creases(height, there, relief.scale)
    skin = relief.skin
    sky = (0.62 - 0.38 * down) * creases
    rim = np.clip(1 - facing, 0, 1) ** 3 * np.clip(0.3 - down * 0.7, 0, 1)
    shine = np.clip(2 * straight * facing - towards[2], 0, 1) ** 24 * skin[..., 3]
    colour = skin[..., :3] * (
        direct[..., None] * tint(light.colour) * (0.55 + 0.45 * creases)[..., None]
        + sky[..., None] * tint(light.fill)
    )
    colour += rim[..., None] * tint(light.back) + (shine * direct)[..., None]
    return _image(colour, there, halve=halve)


def _roughened(relief: Relief, seed: int) -> Plane:
    size = relief.width, relief.depth
    across, down = size[0] / relief.scale / 2, size[1] / relief.scale / 4
    bumps = clouded(size, across, down, seed=seed, octaves=2, fall=0.7)
    return relief.height + bumps * relief.skin[..., 4]


def _normals(height: Plane, scale: float) -> tuple[Plane, Plane, Plane]:
    down, across = (-scale * np.clip(np.gradient(height, axis=axis), -12, 12) for axis in (0, 1))
    length = 1 / np.sqrt(across * across + down * down + 1)
    return across * length, down * length, length


def _creases(height: Plane, there: Mask, scale: float) -> Plane:
    """1 in the open, less where a place lies lower than what is around it."""
    low = np.min(height, where=there, initial=0)
    high = np.max(height, where=there, initial=1)
    even = np.where(there, (height - low) / (high - low), 0).astype(np.float32)
    around = blurred(even, 7 * scale) / np.maximum(
        blurred(there.astype(np.float32), 7 * scale), 0.05
    )
    return np.clip(1 - np.clip(around - even, 0, 1) * (high - low) / 9, 0.25, 1).astype(np.float32)


def _unshadowed(height: Plane, towards: Plane, reach: float, scale: float) -> Plane:
    """1 where the lamp is seen, 0 in shadow, looked for in eight steps towards it."""
    clear = np.ones_like(height)
    run = float(np.hypot(towards[0], towards[1])) or 1.0
    for step in np.linspace(reach / 8, reach, 8):
        dx, dy = round(float(towards[0]) / run * step), round(float(towards[1]) / run * step)
        between = np.roll(height, (-dy, -dx), (0, 1))
        over = between - height - float(towards[2]) / run * step / scale
        np.minimum(clear, np.clip(1 - over / 2, 0, 1), out=clear)
    return clear


def _image(colour: Plane, there: Mask, *, halve: bool) -> Image.Image:
    shown = np.empty((*there.shape, 4), np.uint8)
    shown[..., :3] = np.clip(colour * 255, 0, 255) * there[..., None]
    shown[..., 3] = there * np.uint8(255)
    layer = Image.frombytes("RGBa", (there.shape[1], there.shape[0]), shown.tobytes())
    return (layer.reduce(2) if halve else layer).convert("RGBA")
