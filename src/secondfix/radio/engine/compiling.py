"""What the kernels share: compiled when first asked, kept in the user's own cache folder, plain without."""

from collections.abc import Callable
from typing import Any, TypeVar, cast

from numba import config, njit

F = TypeVar("F", bound=Callable[..., Any])

# Never beside the source: an installed tree may be read by all and written by none.
config.CACHE_LOCATOR_CLASSES = "UserWideCacheLocator"  # type: ignore[attr-defined]  # its stub lags


def kernel(plain: F) -> F:
    """Compile on the first call; later processes load the result from the cache folder."""
    return cast(F, njit(cache=True, error_model="numpy")(plain))
