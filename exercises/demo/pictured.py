"""The drill that the demo's instructor wrote for her own bench, and the pictures sent for it."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from io import BytesIO

from PIL import Image, ImageDraw, ImageFilter, ImageFont

from course.cohorts.models import Cohort, Person
from exercises.demo.in_order import Story
from exercises.desk.verbs import Text, publish, write
from exercises.drills.own import PictureTask
from exercises.models import Attempt, OwnDrill, Review
from exercises.practice.attempts import ask, submit
from exercises.reviews.verbs import Said, review
from exercises.signal.photographs import Photograph, photograph

TASK = PictureTask(
    task="Connect bench 1 as for an insert of picture and sound. Before you switch anything on, "
    "photograph the back of the recorder, so that every lead and its socket can be seen.",
    rubric=(
        "the picture lead and both sound leads, each in the socket of its name",
        "the remote lead between the two machines",
        "no lead that is pulled tight or lies under a machine",
    ),
)
TEXT = Text(title="The leads of bench 1", skill="recorder-set-up", spec=TASK.as_json())
SOCKETS = ("PICTURE IN", "SOUND 1 IN", "SOUND 2 IN", "REMOTE")
LEADS = ((176, 150, 60), (170, 60, 50), (225, 222, 212), (70, 96, 130))


@dataclass(frozen=True, kw_only=True)
class Sent:
    """A picture so many days before today, without one of the leads where it is `missing`."""

    sign_in_name: str
    ago: int
    missing: str = ""
    said: str = ""
    score: int | None = None


SENT = (
    Sent(
        sign_in_name="maeve",
        ago=3,
        said="Every lead is where it belongs, and I can read each socket.",
        score=100,
    ),
    Sent(sign_in_name="lotte", ago=1, missing="SOUND 2 IN"),
)


def write_own(instructor: Person, cohorts: list[Cohort], until: datetime) -> OwnDrill:
    """The drill, published to all cohorts."""
    at = until - timedelta(days=8)
    drill = write(instructor, "picture", TEXT, key="demo-leads", now=at)
    publish(drill, instructor, cohorts, now=at + timedelta(minutes=25))
    return drill


def send(person: Person, instructor: Person, drill: OwnDrill, until: datetime) -> Story:
    """What somebody sent, judged as the cast has it."""
    for each in SENT:
        if each.sign_in_name == person.sign_in_name:
            at = (until - timedelta(days=each.ago)).replace(hour=16, minute=20)
            later = at + timedelta(minutes=14)
            yield later
            asked, made = ask(person, drill.kind, seed=0, now=at), back_of_recorder(each.missing)
            answer = {"picture": made.digest}
            attempt = submit(asked, answer, photograph=made, now=later)
            yield from judge(attempt, each, instructor, later)


def judge(attempt: Attempt, sent: Sent, instructor: Person, at: datetime) -> Story:
    if sent.said:
        at += timedelta(hours=19)
        yield at
        key = f"demo-leads-{sent.sign_in_name}"
        said = Said(what=Review.What.SCORE, text=sent.said, score=sent.score, key=key)
        review(instructor, attempt, said, now=at)


def back_of_recorder(missing: str) -> Photograph:
    """Drawn: four sockets in a panel, and a lead hanging from each but the missing one."""
    image = Image.new("RGB", (960, 640), (92, 84, 74))
    draw = ImageDraw.Draw(image)
    font = ImageFont.load_default(26)
    draw.rounded_rectangle((60, 70, 900, 400), 14, fill=(58, 60, 62), outline=(30, 30, 30), width=4)
    draw.text((90, 90), "BENCH 1   RECORDER", fill=(214, 210, 200), font=font)
    for number, (name, colour) in enumerate(zip(SOCKETS, LEADS, strict=True)):
        x = 165 + 210 * number
        draw.text((x, 180), name, fill=(214, 210, 200), font=font, anchor="mm")
        draw.ellipse(
            (x - 46, 214, x + 46, 306), fill=(150, 150, 148), outline=(20, 20, 20), width=4
        )
        draw.ellipse((x - 26, 234, x + 26, 286), fill=(18, 18, 18))
        if name != missing:
            hang(draw, x, colour)
    out = BytesIO()
    image.filter(ImageFilter.GaussianBlur(0.8)).save(out, "PNG")
    return photograph(BytesIO(out.getvalue()), len(out.getvalue()))


def hang(draw: ImageDraw.ImageDraw, x: int, colour: tuple[int, int, int]) -> None:
    """A plug in the socket at `x`, and its lead down to the edge of the picture."""
    draw.rounded_rectangle((x - 30, 226, x + 30, 350), 10, fill=(34, 34, 36))
    path = [(x + (step * step) // 90, 345 + step * 10) for step in range(31)]
    draw.line(path, fill=colour, width=20, joint="curve")
