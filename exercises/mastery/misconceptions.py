"""What learners wrongly believe: one entry each, and nowhere else."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Misconception:
    """A belief that ruins tapes.

    `learner` is said to the person who seems to hold it, `instructor` to the one who
    teaches them. `critical` ones alone can spoil an irreplaceable tape. `lesson` is the
    slug of the lesson that says otherwise, empty while the course has none.
    """

    id: str
    learner: str
    instructor: str
    skill: str
    critical: bool = False
    lesson: str = ""


MISCONCEPTIONS: dict[str, Misconception] = {
    belief.id: belief
    for belief in (
        Misconception(
            id="insert-lays-pulses",
            learner="Perhaps you expected an insert to lay pulses. "
            "It never does: it needs pulses that are already on the tape.",
            instructor="Believes that an insert records the control track as well, "
            "so that it works on blank tape.",
            skill="tracks-and-pulses",
            critical=True,
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="plays-without-pulses",
            learner="Perhaps you expected picture or sound to play without pulses. "
            "Without pulses nothing locks: what lies there drifts and tears, and can’t be used.",
            instructor="Believes that picture or sound plays where there are no pulses.",
            skill="tracks-and-pulses",
            critical=True,
            lesson="what-is-on-the-tape",
        ),
        Misconception(
            id="sound-needs-no-pulses",
            learner="Perhaps you expected sound to need no pulses. "
            "A sound insert needs them as much as a picture insert does.",
            instructor="Believes that a sound-only insert may go where there are no pulses.",
            skill="tracks-and-pulses",
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="black-is-blank",
            learner="Perhaps you took black for blank tape. "
            "Black is a recording, with pulses under it; blank tape has none.",
            instructor="Believes that black and blank tape are the same.",
            skill="tracks-and-pulses",
            critical=True,
            lesson="what-is-on-the-tape",
        ),
        Misconception(
            id="insert-takes-both",
            learner="Perhaps you expected an insert to take picture and sound. "
            "It records the tracks that you choose, and leaves the others as they are.",
            instructor="Believes that an insert always takes picture and sound.",
            skill="replacing-inside-it",
            critical=True,
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="late-is-safer",
            learner="Perhaps you took a late mark for the safer one. "
            "In assemble it leaves a hole without pulses; an early one costs a few frames.",
            instructor="Believes that marking late is safer than marking early.",
            skill="continuing-a-master",
            critical=True,
            lesson="making-an-edit",
        ),
        Misconception(
            id="assemble-ends-clean",
            learner="Perhaps you expected an assemble to end cleanly in front of what follows. "
            "It wipes the tape past its end, and its pulses don’t join the old ones.",
            instructor="Believes that an assemble can be dropped into the middle and end cleanly.",
            skill="replacing-inside-it",
            critical=True,
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="assemble-picks-tracks",
            learner="Perhaps you expected an assemble to leave one track alone. "
            "It always records picture, sound and pulses.",
            instructor="Believes that an assemble can leave the old sound or picture alone.",
            skill="tracks-and-pulses",
            critical=True,
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="insert-pushes-along",
            learner="Perhaps you expected an insert to make room. "
            "Nothing on a tape moves: an insert records over what is there.",
            instructor="Believes that an insert makes room and what follows moves later.",
            skill="replacing-inside-it",
            critical=True,
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="insert-ends-ragged",
            learner="Perhaps you expected an insert to spoil what comes after it. "
            "Where pulses run on, an insert may end inside a shot.",
            instructor="Believes that an insert can’t end inside a shot.",
            skill="replacing-inside-it",
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="gap-heals",
            learner="Perhaps you expected a short hole to close when the tape is played. "
            "It stays: the tape runs through it at its own pace, and there is snow or silence.",
            instructor="Believes that a short hole between two shots closes itself on playback.",
            skill="mending",
            critical=True,
            lesson="assemble-and-insert",
        ),
        Misconception(
            id="no-master-run-up",
            learner="Perhaps you expected the recorder to need no run-up. "
            "Both machines need it: the edit master too must have pulses in phase before the edit.",
            instructor="Believes that only the player needs a run-up.",
            skill="run-up",
            critical=True,
            lesson="what-is-on-the-tape",
        ),
        Misconception(
            id="no-source-run-up",
            learner="Perhaps you expected a take to be usable from its first frame. "
            "The player needs run-up inside the take before the edit in.",
            instructor="Believes that a take can be used from its first frame.",
            skill="run-up",
            critical=True,
            lesson="what-is-on-the-tape",
        ),
        Misconception(
            id="touching-takes-share-pulses",
            learner="Perhaps you counted run-up in the take before. "
            "Takes that touch are two recordings all the same: the pulses jump between them.",
            instructor="Believes that two takes that touch on a tape give each other run-up.",
            skill="run-up",
            critical=True,
            lesson="what-is-on-the-tape",
        ),
        Misconception(
            id="pre-roll-makes-run-up",
            learner="Perhaps you expected a longer pre-roll to make up for missing run-up. "
            "It makes none: what was never recorded, no machine can lock on.",
            instructor="Believes that a longer pre-roll makes up for run-up "
            "that was never recorded.",
            skill="run-up",
            critical=True,
            lesson="run-up",
        ),
        Misconception(
            id="copy-is-free",
            learner="Perhaps you expected a copy to be as good as what it was copied from. "
            "Each copy adds noise and loses detail.",
            instructor="Believes that copying loses nothing.",
            skill="what-a-copy-is",
            lesson="what-an-edit-is",
        ),
        Misconception(
            id="last-copy-counts",
            learner="Perhaps you looked at the last copy alone. "
            "The noise of every copy in the chain adds up.",
            instructor="Believes that only the last copy’s machine matters, not the chain.",
            skill="what-a-copy-is",
            lesson="what-an-edit-is",
        ),
        Misconception(
            id="whole-tape-one-generation",
            learner="Perhaps you gave the whole edit master one generation. "
            "Each shot has its own: one more than what it was copied from.",
            instructor="Believes that all of an edit master has the same generation.",
            skill="what-a-copy-is",
            lesson="what-an-edit-is",
        ),
        Misconception(
            id="replay-repairs",
            learner="Perhaps you expected an adjustment at playback to repair a bad copy. "
            "What was copied wrong is on the edit master for good.",
            instructor="Believes that tracking or skew wrong while copying can be put right "
            "when the edit master is played.",
            skill="player-set-up",
            critical=True,
            lesson="setting-up-the-player",
        ),
        Misconception(
            id="meter-mark",
            learner="Perhaps you set the meter to a certain mark. "
            "Tracking is right at the meter’s peak, wherever that is.",
            instructor="Believes that the tracking meter must stand at a certain mark "
            "instead of at its peak.",
            skill="player-set-up",
            lesson="setting-up-the-player",
        ),
        Misconception(
            id="meter-beats-picture",
            learner="Perhaps you trusted the meter more than the picture. "
            "Where they disagree, the picture is right.",
            instructor="Believes that the meter is right even when the picture is not.",
            skill="player-set-up",
            lesson="setting-up-the-player",
        ),
        Misconception(
            id="set-once",
            learner="Perhaps you expected tracking to stay as it was set. "
            "It drifts: look again at every tape and while a tape runs.",
            instructor="Believes that tracking set at the start stays right.",
            skill="player-set-up",
            lesson="setting-up-the-player",
        ),
        Misconception(
            id="tracking-skew-swapped",
            learner="Perhaps you took tracking for skew. "
            "Tracking clears a noise band; skew straightens verticals.",
            instructor="Believes that tracking straightens verticals and skew clears "
            "the noise band.",
            skill="player-set-up",
            lesson="setting-up-the-player",
        ),
        Misconception(
            id="tune-the-recorder",
            learner="Perhaps you would turn the recorder’s tracking for the best picture. "
            "It stays at its fixed position; the player’s is adjusted.",
            instructor="Believes that the recorder’s tracking is turned until the picture "
            "looks best.",
            skill="recorder-set-up",
            lesson="setting-up-the-recorder",
        ),
        Misconception(
            id="recorders-alike",
            learner="Perhaps you expected another recorder to do as well. "
            "No two are quite alike: one project, one recorder.",
            instructor="Believes that another recorder may finish the tape.",
            skill="recorder-set-up",
            lesson="setting-up-the-recorder",
        ),
        Misconception(
            id="hotter-is-better",
            learner="Perhaps you expected the highest level to be the safest. "
            "Too much is clipped or distorted, and can’t be put right later.",
            instructor="Believes that as much level as the meter shows is safest.",
            skill="sound-level",
            lesson="picture-and-sound-levels",
        ),
        Misconception(
            id="bars-are-alike",
            learner="Perhaps you took the white bar for a whole white. "
            "Bars differ: the card says which they are, and so where that bar belongs.",
            instructor="Believes that the white bar of any colour bars belongs at 100 IRE.",
            skill="picture-level",
            lesson="setting-up-the-recorder",
        ),
        Misconception(
            id="monitor-is-a-meter",
            learner="Perhaps you went by the monitor. "
            "It shows what its own controls make of a picture; a waveform or a needle measures.",
            instructor="Believes that a monitor shows whether a picture level is right.",
            skill="picture-level",
            lesson="picture-and-sound-levels",
        ),
        Misconception(
            id="level-is-seen-later",
            learner="Perhaps you expected the picture level to be put right when the edit master "
            "is played. What is clipped or lost in noise is so on the tape for good.",
            instructor="Believes that a picture level can be put right "
            "when the edit master is played.",
            skill="picture-level",
            lesson="picture-and-sound-levels",
        ),
        Misconception(
            id="one-level-for-all",
            learner="Perhaps you expected one setting to do for both takes. "
            "Each take has a level of its own: set the control anew for each.",
            instructor="Believes that a level set for one take is right for the next.",
            skill="sound-level",
            lesson="picture-and-sound-levels",
        ),
        Misconception(
            id="agc-evens-out",
            learner="Perhaps you expected automatic gain to improve speech. "
            "It lifts the noise in every pause.",
            instructor="Believes that automatic gain makes speech better.",
            skill="sound-level",
            lesson="picture-and-sound-levels",
        ),
        Misconception(
            id="limiter-is-agc",
            learner="Perhaps you expected a limiter to lift quiet parts. It only holds down peaks.",
            instructor="Believes that a limiter lifts quiet parts.",
            skill="sound-level",
            lesson="picture-and-sound-levels",
        ),
        Misconception(
            id="level-fades",
            learner="Perhaps you expected the level knob to make a fade. "
            "It can’t: a fade is not what it is for, and what it leaves is a faulty picture.",
            instructor="Believes that the level knob can fade to or from black.",
            skill="what-the-bench-cant-do",
            lesson="what-this-bench-cannot-do",
        ),
        Misconception(
            id="two-machines-dissolve",
            learner="Perhaps you expected two machines to make a fade or a dissolve. "
            "All they can make is a cut.",
            instructor="Believes that two machines can fade or dissolve.",
            skill="what-the-bench-cant-do",
            lesson="what-this-bench-cannot-do",
        ),
        Misconception(
            id="mend-later",
            learner="Perhaps you would mend it at the end. "
            "What is laid after a bad edit depends on it, so mend it at once.",
            instructor="Believes that bad edits can be collected and mended at the end.",
            skill="mending",
            critical=True,
            lesson="knowing-a-bad-edit",
        ),
        Misconception(
            id="tape-fault",
            learner="Perhaps you suspected the tape. A disturbance at an edit comes from the edit.",
            instructor="Believes that a disturbance at an edit is the tape’s fault.",
            skill="seeing-a-bad-edit",
            lesson="knowing-a-bad-edit",
        ),
        Misconception(
            id="words-can-spare",
            learner="Perhaps you expected nobody to notice. "
            "A clipped syllable or a breath at a cut is heard.",
            instructor="Believes that a clipped syllable or a breath at a cut will not be noticed.",
            skill="hearing-a-bad-edit",
            lesson="knowing-a-bad-edit",
        ),
        Misconception(
            id="out-is-last-frame",
            learner="Perhaps you took the edit out for the last frame that is copied. "
            "It is the first frame that no longer belongs.",
            instructor="Believes that the edit out is the last frame that is wanted.",
            skill="planning-and-time-code",
            lesson="what-an-edit-is",
        ),
        Misconception(
            id="counter-is-time-code",
            learner="Perhaps you took the tape counter for time code. "
            "The counter counts from where it was set to zero; time code is on the tape.",
            instructor="Believes that the tape counter and time code are one thing.",
            skill="planning-and-time-code",
            lesson="planning",
        ),
        Misconception(
            id="drop-frame-drops-pictures",
            learner="Perhaps you expected drop-frame time code to leave out pictures. "
            "It leaves out labels only.",
            instructor="Believes that drop-frame time code leaves pictures out.",
            skill="planning-and-time-code",
            lesson="planning",
        ),
        Misconception(
            id="any-tape-plays",
            learner="Perhaps you expected that a tape that fits may be played. "
            "What it has been through counts: cold, wet, hot, mouldy or broken, it is not.",
            instructor="Believes that a tape that fits may be played, "
            "whatever it has been through.",
            skill="care-and-safety",
            critical=True,
            lesson="finishing",
        ),
    )
}
