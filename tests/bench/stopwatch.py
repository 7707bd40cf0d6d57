import gc
import time
from collections.abc import Callable


def milliseconds(work: Callable[[], object]) -> float:
    """How long some work takes, rubbish from before it cleared away first."""
    gc.collect()
    started = time.perf_counter()
    work()
    return 1000 * (time.perf_counter() - started)
