"""Sound as samples: what sources hold, what recorders do to it, what is heard of a tape.

Samples are float32, one channel, full scale 1; see ``samples`` for rate and line-up.
"""
