"""How much of a picture is taken, and how much work it may make."""

FORMATS = ("JPEG", "PNG", "WEBP")
LARGEST_FILE = 8_000_000  # bytes
MOST_PIXELS = 25_000_000
SIDE = 2000  # no side of what is kept is longer
QUALITY = 85

# Each pass over a progressive JPEG decodes all its pixels anew. The usual has 10 of them (the
# script of the free JPEG library); encoders that try for the smallest file stay under 20.
MOST_SCANS = 32
# A PNG's parts usually hold 8 kB each, so the largest file that is taken has a thousand.
MOST_PARTS = 5000

# What the process that decodes may use. Of the pictures that are taken, the worst need a tenth of
# the time and five sixths of the memory: `python -m tests.bench.photographs`.
SECONDS = 10  # of a processor
PATIENCE = 30  # seconds by the clock, on a machine that has much else to do
MEMORY = 600_000_000  # bytes of address space

# In each process of the site. Whoever waits holds one of its threads.
AT_ONCE = 1
WAITING = 4
LONGEST_WAIT = 15  # seconds
