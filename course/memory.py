"""What a worker holds in memory, and gives back to the system.

Pictures are drawn in arrays of up to 140 MB, which are free again a moment later. The C library
of most Linux systems keeps what is free for itself: in as many stores (arenas) as there are
threads, up to eight a processor; and once a large block was freed, it puts large ones between small
ones. So a worker held 630 to 740 MB, of which it used 130: `python -m tests.bench.memory`.

Where the C library has no such words (musl, macOS), nothing happens.
"""

import ctypes

ARENAS = 2
LARGE = 4 * 2**20  # bytes; such a block stands alone, and is given back when it is freed
M_MMAP_THRESHOLD, M_ARENA_MAX = -3, -8  # malloc.h of glibc

libc = ctypes.CDLL(None)


def hold() -> None:
    """Let all threads share few stores, without large blocks. Before the first thread begins."""
    if hasattr(libc, "mallopt"):
        libc.mallopt(M_ARENA_MAX, ARENAS)
        libc.mallopt(M_MMAP_THRESHOLD, LARGE)


def give_back() -> None:
    """All free pages of all stores, which costs a few milliseconds."""
    if hasattr(libc, "malloc_trim"):
        libc.malloc_trim(0)
