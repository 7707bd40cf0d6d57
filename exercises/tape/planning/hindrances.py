"""Why a brief can't be fulfilled, whatever is recorded: facts of its tapes and the bench.

Each is a full sentence. What is told here holds for every list of recordings; a brief
that nothing is told of may still have none.
"""

from collections.abc import Iterator

from exercises.tape.judging.brief import Kept
from exercises.tape.judging.ranges import merged
from exercises.tape.planning.bounds import Bounds
from exercises.tape.planning.keeping import is_solid, rolls
from exercises.tape.planning.settling import source_start
from exercises.tape.planning.stand import Stand, stand
from exercises.tape.planning.target import Target, WantedPart
from exercises.tape.timecode import label
from exercises.tape.wording import lasting, listed, run_up, span
from exercises.tape.work import spend


class Hindrances:
    def __init__(self, target: Target) -> None:
        self.target = target
        self.bench = target.bench
        self.stand: Stand = stand(target, target.before)

    def __iter__(self) -> Iterator[str]:
        """Each of them once, source tapes first."""
        return iter(dict.fromkeys(self._all()))

    def _all(self) -> Iterator[str]:
        missing = [(self.target.parts[n], lacks) for n, lacks in self.stand.missing.items()]
        for part, _ in missing:
            yield from self._on_source(part)
        for part, lacks in missing:
            yield from self._before(part, lacks[0][0])
        yield from self._no_black()
        for _, lacks in missing:
            for start, end in lacks:
                yield from self._no_pulses(start, end)

    def _code(self, frame: int) -> str:
        return label(frame, self.bench.rate, self.bench.drop_frame)

    def _span(self, start: int, end: int) -> str:
        return span(start, end, self.bench.rate, self.bench.drop_frame)

    def _long(self, frames: int) -> str:
        return lasting(frames, self.bench.rate)

    def _run_up_of(self, frames: int) -> str:
        return run_up(frames, self.bench.rate)

    def _on_source(self, part: WantedPart) -> Iterator[str]:
        name, shift = part.strand
        if name not in self.target.sources:
            yield f"The shot at {self._code(part.start)} is on {name}, and there is no such tape."
            return
        reached = part.start
        for start, end, take in self.target.takes(part.strand):
            if end <= part.start or start >= part.end:
                continue
            if start > reached:
                break
            yield from self._generation(part, take.generation)
            yield from self._run_up(part, max(part.start, start), start)
            reached = end
        if reached < part.end:
            bare = self._span(reached - shift, part.end - shift)
            yield f"The shot at {self._code(part.start)} is not on {name}: it is blank {bare}."

    def _generation(self, part: WantedPart, generation: int) -> Iterator[str]:
        highest = self.target.brief.highest_generation
        if highest is not None and generation >= highest:
            yield (
                f"The shot at {self._code(part.start)} is generation {generation} on "
                f"{part.strand.source}; its copy is one more, and at most {highest} is wanted."
            )

    def _run_up(self, part: WantedPart, frame: int, begins: int) -> Iterator[str]:
        """Of the take that begins at this master frame, at the first frame wanted of it."""
        if source_start(self.target, part.strand, frame) is not None:
            return
        name, shift = part.strand
        if frame > part.start:
            yield (
                f"Inside the shot at {self._code(part.start)} a new take begins, at "
                f"{self._code(frame - shift)} on {name}, and no machine is steady on it at once."
            )
            return
        yield (
            f"The shot at {self._code(frame - shift)} on {name} has "
            f"{self._run_up_of(frame - begins)}; the machines need "
            f"{self._long(self.bench.lock)}."
        )

    def _before(self, part: WantedPart, start: int) -> Iterator[str]:
        """What is too short on the master, before the first frame that is missing."""
        need = max(self.bench.lock, self.bench.relock)
        if start < need:
            where = f"{self._long(start)} from" if start else "at"
            yield (
                f"The shot at {self._code(start)} begins {where} the start of the tape; the "
                f"machines need {self._long(need)} of run-up."
            )
            return
        has = self.target.before.run_up(start)
        kept: list[str] = []
        if has < self.bench.relock:
            kept = self._kept_in(start - self.bench.relock, start)
        elif has < self.bench.lock and self.bench.relock:
            kept = [side for side in self._kept_in(start - 1, start) if side == part.side]
        if kept:
            yield (
                f"The master has {self._run_up_of(has)} before {self._code(start)}, the "
                f"machines need {self._long(need)}, and the {listed(kept)} there has to stay."
            )

    def _no_black(self) -> Iterator[str]:
        bounds = Bounds(self.target)
        needs = bounds.needs(self.stand, self.target.before)
        if not needs.black or self.target.brief.black in self.target.sources:
            return
        reached = min(end for _, end in bounds.leads(self.stand, self.target.before))
        starts = (self.target.parts[number].start for number in self.stand.missing)
        start = min((start for start in starts if start >= reached), default=reached)
        has = self.target.before.run_up(start)
        need = max(self.bench.lock, self.bench.relock)
        if has >= need:
            yield (
                f"The shot at {self._code(start)} can only be recorded together with what is "
                "before it on its tape, and there is no black to cover that with."
            )
        else:
            yield (
                f"The master has {self._run_up_of(has)} before {self._code(start)}, the "
                f"machines need {self._long(need)}, and there is no black to lay it with."
            )

    def _no_pulses(self, start: int, end: int) -> Iterator[str]:
        """What stands in the way of the assemble that has to lay pulses here."""
        bare = self._bare(start, end)
        if bare is None:
            return
        spend(len(self.target.brief.kept) // 8)
        for kept in self.target.brief.kept:
            if kept.start <= bare < kept.end:
                yield (
                    f"There are no steady pulses at {self._code(bare)}, and only an assemble lays "
                    f"them; it would record over the {_named(kept)} that has to stay there."
                )
                return
        blocks = merged((part.start, part.end) for part in self.target.parts)
        spoiled = [self._spoiled(bare, last) for _, last in blocks if last > bare]
        if all(spoiled) and spoiled[0]:
            yield (
                f"Only an assemble lays the pulses that are missing at {self._code(bare)}, and it "
                f"wipes {self._long(self.bench.erase_gap)} past its end; the {_named(spoiled[0])} "
                f"{self._span(spoiled[0].start, spoiled[0].end)} has to stay."
            )

    def _bare(self, start: int, end: int) -> int | None:
        """The first of these frames that the master's pulses don't play."""
        frame = start
        for run in self.target.before.control.laid.between(start, end):
            if run.start + self.bench.relock > frame:
                return frame
            frame = run.end
        return frame if frame < end else None

    def _spoiled(self, first: int, last: int) -> Kept | None:
        """What has to stay and would not, were the last of the assembles to end here."""
        tape = self.target.before
        wiped = min(last + self.bench.erase_gap, tape.length)
        for kept in self.target.brief.kept:
            spend()
            over = kept.start < last and first < kept.end
            start, end = max(kept.start, last), min(kept.end, wiped)
            gone = start < end and is_solid(tape, kept, start, end)
            if over or gone or rolls(tape, self.bench, kept, wiped):
                return kept
        return None

    def _kept_in(self, start: int, end: int) -> list[str]:
        """What has to stay in a range."""
        spend(len(self.target.brief.kept) // 8)
        kept = (each for each in self.target.brief.kept if each.start < end and start < each.end)
        return list(dict.fromkeys(_named(each) for each in kept))


def _named(kept: Kept) -> str:
    return "control track" if kept.track == "control" else kept.track
