"""One lesson that has every block."""

from tests.course.lessons.sample import LESSON

BLOCKS = """
```signal-path
name = "bench"
title = "From the player to the recorder"
caption = "The sound goes through the mixer."
boxes = { player = [1, 1], mixer = [2, 2], recorder = [3, 1], "picture monitor" = [4, 1] }
links = [
  { from = "player", to = "recorder", carries = "picture" },
  { from = "player", to = "mixer", carries = "sound" },
  { from = "mixer", to = "recorder", carries = "sound", label = "sound in" },
  { from = "recorder", to = "picture monitor", carries = "picture" },
  { from = "recorder", to = "player", carries = "control" },
]
```

```head-and-track
name = "off"
title = "On the stripe, and beside it"
caption = "What lies beside the stripe is noise."
tracking = [0, 50]
stretch = [0, 10]
lines = ["Set.", "Off."]
```

```levels
name = "speech"
title = "Where speech belongs"
caption = "The loudest words just reach 0."
scale = "VU"
marks = [{ at = 0, name = "line-up tone" }]
ranges = [{ from = -10, to = 0, name = "ordinary speech" }]
```

```edit-course
name = "bell"
title = "One edit, from parked to parked"
caption = "The player is late."
source = 500
master = 250
length = 150
pre_roll = 125
post_roll = 50
run_up = { source = 75, master = 250 }
```

```picture
name = "one"
title = "The keeper at the winch"
caption = "Look."
scene = "winch"
```

```picture
name = "two"
title = "Tracking set, and off"
caption = "Look."
scene = "winch"
panels = [{ line = "Set." }, { line = "Off.", look = { tracking = 55 } }]
```

```sound
name = "said"
title = "The keeper’s answer"
caption = "Listen."
map = "map"
start = 250
end = 300
says = { A = { lines = ["keeper-3"], begin = 12000 } }
```

```checklist
name = "before"
title = "Before you switch on"
groups = [{ title = "Look", lines = ["Every lead is whole."] }]
```
"""
GALLERY = LESSON + BLOCKS
IDS = [
    "signal-path-bench",
    "head-and-track-off",
    "levels-speech",
    "edit-course-bell",
    "picture-one",
    "picture-two",
    "sound-said",
    "checklist-before",
]
