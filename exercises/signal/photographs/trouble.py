"""Why a picture is not taken, each in a sentence for whoever sent it."""

from enum import IntEnum

from exercises.signal.photographs.limits import LARGEST_FILE, MOST_PARTS, MOST_PIXELS, MOST_SCANS

SAVE_ANEW = "Save it anew as a plain JPEG, and send that."


class PictureTrouble(IntEnum):
    """The numbers are those with which the process that decodes says so: see `worker.py`."""

    EMPTY = 10
    LARGE = 11
    NO_PICTURE = 12
    PIXELS = 13
    SCANS = 14
    PARTS = 15
    BROKEN = 16
    WORK = 17


SENTENCES = {
    PictureTrouble.EMPTY: "The file is empty. Choose another one.",
    PictureTrouble.LARGE: f"The file is larger than {LARGEST_FILE // 1_000_000} MB. "
    "Send a smaller picture.",
    PictureTrouble.NO_PICTURE: "This is no JPEG, PNG or WebP picture. Send one of these.",
    PictureTrouble.PIXELS: f"The picture has more than {MOST_PIXELS // 1_000_000} million pixels. "
    "Send a smaller one.",
    PictureTrouble.SCANS: f"The picture is stored in more than {MOST_SCANS} layers. {SAVE_ANEW}",
    PictureTrouble.PARTS: f"The picture is stored in more than {MOST_PARTS:,} parts. {SAVE_ANEW}",
    PictureTrouble.BROKEN: "The picture is broken or cut short. Send it again.",
    PictureTrouble.WORK: f"The picture takes too much work to read. {SAVE_ANEW}",
}


class PhotographRefused(ValueError):
    """It is no picture that can be taken; the message is a sentence for whoever sent it."""

    def __init__(self, trouble: PictureTrouble) -> None:
        self.trouble = trouble
        super().__init__(SENTENCES[trouble])
