"""Ids and the clock of the desk: made here, at the edge."""

import os
import time
from datetime import UTC, datetime
from uuid import UUID

from secondfix.house import uuid7


def new_id() -> UUID:
    """A UUID of version 7 (RFC 9562)."""
    return UUID(uuid7(unix_ms=time.time_ns() // 1_000_000, random=os.urandom(10)))


def now() -> datetime:
    """Now, in UTC."""
    return datetime.now(UTC)
