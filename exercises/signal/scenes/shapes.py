"""Shapes with smooth edges: drawn twice as large with Pillow, then halved."""

from collections.abc import Callable, Sequence

import numpy as np
from PIL import Image, ImageDraw

from exercises.signal.arrays import Plane, Size

Point = tuple[float, float]
Ink = tuple[int, int, int] | tuple[int, int, int, int]
TWICE = 2


class Pen:
    """Draws in points (a scene is 640 wide) on an image that is twice its final size."""

    def __init__(self, draw: ImageDraw.ImageDraw, scale: float, origin: Point = (0, 0)) -> None:
        self._draw = draw
        self._scale = scale
        self._origin = origin

    def _at(self, points: Sequence[Point]) -> list[Point]:
        left, top = self._origin
        return [((x - left) * self._scale, (y - top) * self._scale) for x, y in points]

    def polygon(self, points: Sequence[Point], ink: Ink | int) -> None:
        self._draw.polygon(self._at(points), fill=ink)

    def box(self, left: float, top: float, right: float, bottom: float, ink: Ink | int) -> None:
        self.polygon([(left, top), (right, top), (right, bottom), (left, bottom)], ink)

    def line(self, points: Sequence[Point], ink: Ink | int, width: float = 1) -> None:
        thick = max(1, round(width * self._scale))
        self._draw.line(self._at(points), fill=ink, width=thick, joint="curve")

    def disc(self, centre: Point, radius: float, ink: Ink | int, *, tall: float = 1) -> None:
        (x, y), across = centre, radius * tall
        self._draw.ellipse(self._at([(x - radius, y - across), (x + radius, y + across)]), fill=ink)

    def ring(self, centre: Point, radius: float, ink: Ink | int, width: float = 1) -> None:
        (x, y) = centre
        box = self._at([(x - radius, y - radius), (x + radius, y + radius)])
        self._draw.ellipse(box, outline=ink, width=max(1, round(width * self._scale)))

    def arc(
        self,
        centre: Point,
        radius: float,
        degrees: tuple[float, float],
        ink: Ink | int,
        width: float,
    ) -> None:
        """Degrees run clockwise from three o'clock."""
        (x, y) = centre
        box = self._at([(x - radius, y - radius), (x + radius, y + radius)])
        self._draw.arc(box, *degrees, fill=ink, width=max(1, round(width * self._scale)))


Drawing = Callable[[Pen], None]


def box(left: float, top: float, right: float, bottom: float) -> Drawing:
    """A rectangle that covers fully, as a drawing."""
    return lambda pen: pen.box(left, top, right, bottom, 255)


def outline(points: Sequence[Point]) -> Drawing:
    """A polygon that covers fully, as a drawing."""
    return lambda pen: pen.polygon(points, 255)


def cover(size: Size, drawing: Drawing) -> Plane:
    """How far each pixel is covered, 0 to 1; the drawing uses inks 0 to 255."""
    image = Image.new("L", (size[0] * TWICE, size[1] * TWICE))
    drawing(Pen(ImageDraw.Draw(image), TWICE * size[0] / 640))
    return np.asarray(image.reduce(TWICE)).astype(np.float32) / 255


def stamp(image: Image.Image, box: tuple[float, float, float, float], drawing: Drawing) -> None:
    """Draw into part of an image; ``box`` (left, top, right, bottom in points) bounds it.

    Only the box is touched, so that something small that moves costs little.
    """
    scale = image.width / 640
    left, top = int(box[0] * scale), int(box[1] * scale)
    width, height = int(box[2] * scale) - left, int(box[3] * scale) - top
    if width <= 0 or height <= 0:
        return
    layer = Image.new("RGBa", (width * TWICE, height * TWICE))
    drawing(Pen(ImageDraw.Draw(layer), TWICE * scale, (left / scale, top / scale)))
    small = layer.reduce(TWICE).convert("RGBA")
    image.paste(small, (left, top), small)
