"""The skills that a bench asks for, in the order in which they are taught."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Skill:
    """One of the things a learner must be able to do; drills and misconceptions name it."""

    slug: str
    title: str


SKILLS: dict[str, Skill] = {
    skill.slug: skill
    for skill in (
        Skill("what-a-copy-is", "What a copy is"),
        Skill("tracks-and-pulses", "Tracks and pulses"),
        Skill("continuing-a-master", "Continuing an edit master"),
        Skill("replacing-inside-it", "Replacing inside it"),
        Skill("run-up", "Run-up"),
        Skill("player-set-up", "Player set-up"),
        Skill("recorder-set-up", "Recorder set-up"),
        Skill("picture-level", "Picture level"),
        Skill("sound-level", "Sound level"),
        Skill("seeing-a-bad-edit", "Seeing a bad edit"),
        Skill("hearing-a-bad-edit", "Hearing a bad edit"),
        Skill("mending", "Mending"),
        Skill("planning-and-time-code", "Planning and time code"),
        Skill("what-the-bench-cant-do", "What the bench can’t do"),
        Skill("care-and-safety", "Care and safety"),
    )
}
