"""Controls that a learner turns: what the drills of tracking, skew and levels share."""
