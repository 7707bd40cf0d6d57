"""What moves about a harbour: gulls and a tug."""

from math import sin

from exercises.signal.scenes.shapes import Drawing, Ink, Pen, Point


def gull_drawing(at: Point, span: float, beat: float, ink: Ink) -> Drawing:
    """``beat`` in radians: how far through a beat its wings are."""
    return lambda pen: _draw_gull(pen, at, span, beat, ink)


def _draw_gull(pen: Pen, at: Point, span: float, beat: float, ink: Ink) -> None:
    x, y = at
    lift = span * 0.20 * sin(beat)
    for side in (-1, 1):
        elbow = (x + side * span * 0.20, y - span * 0.10 - lift * 0.55)
        tip = (x + side * span * 0.50, y - lift + span * 0.03)
        under = (x + side * span * 0.20, y - span * 0.035 - lift * 0.5)
        pen.polygon([(x, y - span * 0.03), elbow, tip, under, (x, y + span * 0.035)], ink)
    pen.disc((x, y), span * 0.05, ink, tall=0.8)


def draw_tug(pen: Pen, at: Point, long: float, haze: float = 0.0) -> None:
    """At her bow's foot on the water line, heading right; ``haze`` 0 to 1 greys her."""
    x, y = at
    unit = long / 100

    def ink(red: int, green: int, blue: int) -> Ink:
        grey = (168, 164, 158)
        mixed = [
            round(band + (far - band) * haze)
            for band, far in zip((red, green, blue), grey, strict=True)
        ]
        return mixed[0], mixed[1], mixed[2]

    def on(*points: Point) -> list[Point]:
        return [(x - (100 - px) * unit, y - py * unit) for px, py in points]

    pen.polygon(
        on((0, 1), (3, 12), (30, 10), (62, 12), (88, 18), (99, 24), (101, 22), (96, 0), (4, 0)),
        ink(38, 44, 52),
    )
    pen.polygon(on((0, 1), (4, -1), (96, -1), (96.6, 3), (2, 4)), ink(116, 44, 36))
    pen.line(on((3, 12), (30, 10), (62, 12), (88, 18), (99, 24)), ink(196, 184, 150), 1.6 * unit)
    pen.polygon(on((34, 11), (34, 25), (66, 26), (66, 12)), ink(176, 160, 126))
    pen.polygon(on((50, 25), (51, 41), (67, 42), (70, 26)), ink(206, 198, 178))
    for left in (52.5, 58.0, 63.0):
        pen.polygon(on((left, 32), (left, 38), (left + 3.8, 38), (left + 3.8, 32)), ink(42, 56, 66))
    pen.polygon(on((48, 41), (48, 43.5), (70, 44), (70, 41.5)), ink(92, 60, 44))
    pen.polygon(on((37, 25), (37.5, 46), (46, 46), (47, 25)), ink(122, 52, 38))
    pen.polygon(on((37.3, 40), (37.5, 46), (46, 46), (46.4, 40)), ink(34, 34, 36))
    pen.line(on((60, 43), (60, 62)), ink(70, 60, 50), 1.1 * unit)
    pen.line(on((60, 60), (97, 24)), ink(90, 84, 76), 0.5 * unit)
    for tyre in (16, 30, 72, 84):
        pen.ring(on((tyre, 7))[0], 3.2 * unit, ink(16, 17, 19), 1.6 * unit)
