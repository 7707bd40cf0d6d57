"""Meters: how a needle moves, and where its scale's marks are."""
