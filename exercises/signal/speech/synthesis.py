"""The speech synthesiser espeak-ng, by its C library (speak_lib.h), with where each word begins.

Only for making the recordings anew; nothing here runs on a site.
"""

import ctypes
from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

LIBRARY = "libespeak-ng.so.1"
SYNCHRONOUS = 2  # espeak_AUDIO_OUTPUT: hands the samples over and plays nothing
UTF8 = 1
BY_CHARACTER = 1  # espeak_POSITION_TYPE
LAST_EVENT, WORD = 0, 1  # espeak_EVENT_TYPE
WORDS_A_MINUTE, VOLUME, PITCH, RANGE = 1, 2, 3, 4  # espeak_PARAMETER


@dataclass(frozen=True, slots=True, kw_only=True)
class Voice:
    """A voice by the synthesiser's name for it, and how it speaks."""

    voice: str
    words_a_minute: int
    pitch: int
    range: int


@dataclass(frozen=True, slots=True)
class Spoken:
    """A phrase, and the sample at which each of its words begins."""

    samples: NDArray[np.int16]
    words: tuple[int, ...]
    rate: int


class _Id(ctypes.Union):
    _fields_ = (
        ("number", ctypes.c_int),
        ("name", ctypes.c_char_p),
        ("string", ctypes.c_char * 8),
    )


class _Event(ctypes.Structure):
    _fields_ = (
        ("type", ctypes.c_int),
        ("unique_identifier", ctypes.c_uint),
        ("text_position", ctypes.c_int),
        ("length", ctypes.c_int),
        ("audio_position", ctypes.c_int),
        ("sample", ctypes.c_int),
        ("user_data", ctypes.c_void_p),
        ("id", _Id),
    )


_Callback = ctypes.CFUNCTYPE(
    ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.POINTER(_Event)
)


@cache
def _library() -> tuple[ctypes.CDLL, int]:
    """The library, begun, and the rate of its samples."""
    library = ctypes.CDLL(LIBRARY)
    rate: int = library.espeak_Initialize(SYNCHRONOUS, 0, None, 0)
    return library, rate


def speak(phrase: str, voice: Voice) -> Spoken:
    library, rate = _library()
    heard: list[NDArray[np.int16]] = []
    words: list[int] = []

    def take(
        wave: "ctypes._Pointer[ctypes.c_short]", count: int, events: "ctypes._Pointer[_Event]"
    ) -> int:
        if wave and count:
            heard.append(np.ctypeslib.as_array(wave, (count,)).copy())
        at = 0
        while events[at].type != LAST_EVENT:
            if events[at].type == WORD and events[at].length:
                words.append(events[at].sample)
            at += 1
        return 0

    callback = _Callback(take)
    library.espeak_SetSynthCallback(callback)
    _set(library, voice)
    text = phrase.encode() + b"\0"
    library.espeak_Synth(text, len(text), 0, BY_CHARACTER, 0, UTF8, None, None)
    library.espeak_Synchronize()
    return Spoken(np.concatenate(heard), tuple(words), rate)


def _set(library: ctypes.CDLL, voice: Voice) -> None:
    if library.espeak_SetVoiceByName(voice.voice.encode()) != 0:
        raise ValueError(f"The synthesiser has no voice {voice.voice!r}.")
    values = (
        (WORDS_A_MINUTE, voice.words_a_minute),
        (VOLUME, 80),
        (PITCH, voice.pitch),
        (RANGE, voice.range),
    )
    for parameter, value in values:
        library.espeak_SetParameter(parameter, value, 0)
