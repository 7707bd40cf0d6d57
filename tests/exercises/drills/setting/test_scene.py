from exercises.drills.setting.draw import Draw
from exercises.drills.setting.scene import Scene
from exercises.drills.setting.settings import USUAL
from exercises.tape import read_edit_session

SEEDS = range(20)


def scene(seed: int = 1) -> Scene:
    return Scene(Draw(seed), USUAL)


def test_scene_with_many_clips_is_a_session() -> None:
    for seed in SEEDS:
        made = scene(seed)
        made.record(0, 600, "leader")
        at = 600
        for _ in range(12):
            at = made.assemble(made.clip(made.seconds(4, 9)), at)

        session = read_edit_session(made.document())

        assert len(session.edits) == 12, seed
        assert session.recorded().control.runs[0].end == at, seed


def test_clip_has_the_run_up_asked_for() -> None:
    for seed in SEEDS:
        made = scene(seed)
        clips = [made.clip(100), made.clip(100, run_up=40), made.clip(100, run_up=0)]
        sources = read_edit_session(made.document()).sources
        run_ups = [sources[clip.tape].run_up(clip.in_) for clip in clips]

        assert run_ups[0] >= made.bench.lock, seed
        assert run_ups[1:] == [40, 0], seed


def test_take_stops_or_gives_way_where_asked() -> None:
    made = scene()

    stops, joint = made.clip(100, stops=70), made.clip(100, joint=60)

    assert stops.takes[0][1] == stops.in_ + 70
    assert joint.takes[0][1] == joint.takes[1][0] == joint.in_ + 60


def test_shots_do_not_repeat() -> None:
    made = scene()
    shots = [made.clip(50).shot for _ in range(12)]

    assert len(set(shots)) == 12
