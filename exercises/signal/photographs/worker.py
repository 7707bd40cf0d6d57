"""The process that decodes: a picture on standard input, what was drawn on standard output.

    python -m exercises.signal.photographs.worker SECONDS BYTES < picture > drawn.jpeg

So many seconds of a processor and bytes of memory are all that it takes. It ends with 0, or with
the number of the `Trouble` that the picture has. It limits itself, before it loads a decoder:
`apart.py` may run nothing between fork and exec, since the site has threads.
"""

import resource
import sys


def main(seconds: str, memory: str) -> int:
    hold(resource.RLIMIT_CPU, int(seconds))
    hold(resource.RLIMIT_AS, int(memory))
    hold(resource.RLIMIT_FSIZE, 0)  # it writes to no file
    hold(resource.RLIMIT_CORE, 0)
    from exercises.signal.photographs.drawing import drawn_anew
    from exercises.signal.photographs.trouble import PhotographRefused, PictureTrouble

    try:
        sys.stdout.buffer.write(drawn_anew(sys.stdin.buffer.read()))
    except PhotographRefused as refused:
        return refused.trouble
    except MemoryError:
        return PictureTrouble.WORK
    return 0


def hold(limit: int, most: int) -> None:
    """Never above what the operator allows already."""
    _, allowed = resource.getrlimit(limit)
    most = most if allowed == resource.RLIM_INFINITY else min(most, allowed)
    resource.setrlimit(limit, (most, most))


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
