"""Where a disturbance begins to be a fault."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Limits:
    """The last value of each kind that is still no fault; a bench may set its own.

    ==================  =========  ======================================================
    flash_frames        frames     longest stretch between two shots that is a flash
                                   (common practice)
    clipped_word        frames     of a word lost at an edit point (common practice)
    stray_breath        frames     of a breath left at an edit point (common practice)
    picture_step        IRE        between neighbours (common practice)
    sound_step          0.1 dB     between neighbours: 2 to 3 dB is what is noticed in
                                   ordinary material (Master Handbook of Acoustics)
    flat_picture        IRE        lowest white (common practice)
    clipped_picture     IRE        highest white: peaks of 110 IRE (common practice)
    weak_sound          0.1 dB     over line-up, lowest (common practice)
    distorted_sound     0.1 dB     over line-up, highest: the end of a VU meter's scale
                                   (IEC 60268-17)
    limiting            0.1 dB     that a limiter takes off speech: a few dB off its peaks
                                   (common practice)
    noise_floor         0.1 dB     over line-up, that automatic gain may lift a pause to
                                   (common practice)
    envelope_loss       0.1 dB     of the heads' signal, by tracking (common practice)
    skew                0.1 µs     step where the heads change over (common practice)
    recorder_tracking   percent    of a track, off the fixed position (common practice)
    recorders           machines   that neighbouring pictures come from (common practice)
    grade               grade      of ITU-R BT.500 that noise must leave, by the CCIR formula
    sound_early         ms         detectable (ITU-R BT.1359-1)
    sound_late          ms         detectable (ITU-R BT.1359-1)
    sound_early_most    ms         acceptable (ITU-R BT.1359-1)
    sound_late_most     ms         acceptable (ITU-R BT.1359-1)
    ==================  =========  ======================================================
    """

    flash_frames: int = 3
    clipped_word: int = 0
    stray_breath: int = 0
    picture_step: int = 10
    sound_step: int = 30
    flat_picture: int = 80
    clipped_picture: int = 110
    weak_sound: int = -100
    distorted_sound: int = 30
    limiting: int = 40
    noise_floor: int = -300
    envelope_loss: int = 60
    skew: int = 10
    recorder_tracking: int = 0
    recorders: int = 1
    grade: int = 4
    sound_early: int = 45
    sound_late: int = 125
    sound_early_most: int = 90
    sound_late_most: int = 185


LIMITS = Limits()
