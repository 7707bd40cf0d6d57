"""What the C library does with memory, as the site tells it to."""

import subprocess
import sys
from pathlib import Path

import pytest

from course.memory import ARENAS, libc

ROOT = Path(__file__).parents[2]

pytestmark = pytest.mark.skipif(
    not hasattr(libc, "malloc_trim"), reason="the C library here is not glibc"
)

# Twice as many threads as a worker has use memory at once; malloc_info(3) lists the stores.
STORES = """
import ctypes, threading
import course.wsgi
from course.memory import libc
together = threading.Barrier(16)
def use():
    together.wait()
    for _ in range(100):
        libc.malloc(1000)
threads = [threading.Thread(target=use) for _ in range(16)]
for thread in threads: thread.start()
for thread in threads: thread.join()
libc.malloc_info(0, ctypes.c_void_p.in_dll(libc, "stdout"))
libc.fflush(None)
"""

# 90 MB in blocks of 3 kB, of which one in fifty stays in use.
HOLES = """
import ctypes, re
from course.memory import give_back, libc
libc.malloc.restype = ctypes.c_void_p
libc.free.argtypes = [ctypes.c_void_p]
def resident():
    return int(re.findall(r"VmRSS:\\s+(\\d+)", open("/proc/self/status").read())[0])
blocks = [libc.malloc(3000) for _ in range(30_000)]
for block in blocks: ctypes.memset(block, 1, 3000)
for number, block in enumerate(blocks):
    if number % 50: libc.free(block)
before = resident()
give_back()
print((before - resident()) // 1000)
"""


def said_by(program: str) -> str:
    command = [sys.executable, "-c", program]
    return subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=True).stdout


def test_all_threads_of_the_site_share_few_stores() -> None:
    assert said_by(STORES).count("<heap nr=") <= ARENAS


def test_what_is_free_between_blocks_in_use_is_given_back() -> None:
    assert int(said_by(HOLES)) > 50  # MB
