"""Compiled or plain: the kernels load when a draw, a count or a cover is asked for, and never before."""

from functools import cache
from types import ModuleType


@cache
def kernels(name: str) -> ModuleType | None:
    """Give the module of compiled kernels called ``name``; None where the compiler is not installed."""
    try:
        from secondfix.radio.covering import across_kernel  # noqa: PLC0415 - as the others
        from secondfix.radio.engine import (  # noqa: PLC0415 - a cold `check` must not pay for a compiler
            drawing_kernel,
            gone_kernel,
            panels_kernel,
            searching_kernel,
        )
    except ImportError:
        return None
    return {
        "across_kernel": across_kernel,
        "drawing_kernel": drawing_kernel,
        "gone_kernel": gone_kernel,
        "panels_kernel": panels_kernel,
        "searching_kernel": searching_kernel,
    }[name]
