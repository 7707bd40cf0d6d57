"""Which generation? A chain of dubs and edits: what each shot of the edit master has become."""

from exercises.drills.kind import Kind
from exercises.drills.kinds.which_generation.question import candidates
from exercises.drills.kinds.which_generation.verdict import grade, near

WHICH_GENERATION = Kind(
    slug="which-generation",
    title="Which generation?",
    purpose="Tapes copied from tapes: count each shot’s generation, and work out its noise.",
    skills=("what-a-copy-is",),
    lesson="what-an-edit-is",
    revision=4,
    template="drills/kinds/which_generation.html",
    candidates=candidates,
    grade=grade,
    near=near,
)
