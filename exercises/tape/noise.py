"""Noise and detail through a chain of copies, and what viewers make of the noise."""

from collections.abc import Iterable
from math import inf, log10, sqrt


def chain_snr(recordings: Iterable[float]) -> float:
    """Signal-to-noise in dB through recordings of so many dB each: noise powers add.

    >>> round(chain_snr([46, 43]), 2)
    41.24
    """
    noise = sum(10 ** (-snr / 10) for snr in recordings)
    return -10 * log10(noise) if noise else inf


def equal_copies_snr(snr: float, copies: int) -> float:
    """The same for copies alike: each doubling of their number costs 3 dB."""
    return snr - 10 * log10(copies)


def grade_snr(grade: float) -> float:
    """Weighted signal-to-noise in dB at a grade of ITU-R BT.500: the CCIR formula."""
    return 23 - grade + 1.1 * grade**2


def noise_grade(snr: float) -> float:
    """The grade that noise leaves, 1 to 5: the same formula, turned round.

    >>> round(noise_grade(43), 2)
    4.74
    """
    under_root = 1 + 4.4 * (snr - 23)
    return min(5.0, max(1.0, (1 + sqrt(max(0.0, under_root))) / 2.2))


def gaussian_bandwidth(stages: int) -> float:
    """The share of bandwidth that equal Gaussian stages leave: edges grow with their root."""
    return 1 / sqrt(stages)
