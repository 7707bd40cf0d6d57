"""The cheapest list of recordings that fulfils a brief, or why there is none."""

from exercises.tape.planning.plan import NoPlan, Plan, Planned, plan

__all__ = ["NoPlan", "Plan", "Planned", "plan"]
