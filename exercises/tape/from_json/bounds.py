"""What the figures of a document can be. Beyond these no machine, tape or signal goes."""

from typing import NamedTuple

from exercises.tape.from_json.document_value import DocumentValue


class NumberBounds(NamedTuple):
    least: int
    most: int

    def read(self, given: DocumentValue) -> int:
        return given.whole(self.least, self.most)


WHITE = NumberBounds(0, 140)  # IRE; a whole composite signal is 140 IRE high
LEVEL = NumberBounds(-900, 200)  # 0.1 dB over line-up
GAIN = NumberBounds(-600, 600)  # 0.1 dB
TRACK = NumberBounds(-100, 100)  # percent of a track; at 100 the heads are on the next track
SKEW = NumberBounds(-200, 200)  # 0.1 µs; a tape stretched by one in a thousand
SNR = NumberBounds(100, 900)  # 0.1 dB
GRADES = NumberBounds(1, 5)
