"""The tables."""

from secondfix.store.models.accounts import Account, Right
from secondfix.store.models.counts import LastCheck
from secondfix.store.models.houses import CoverSheet, Edit, House, Issue, Stage
from secondfix.store.models.journal import JournalEntry
from secondfix.store.models.keys import KeyEntry, KeyShown
from secondfix.store.models.lists import ListMapping

__all__ = [
    "Account",
    "CoverSheet",
    "Edit",
    "House",
    "Issue",
    "JournalEntry",
    "KeyEntry",
    "KeyShown",
    "LastCheck",
    "ListMapping",
    "Right",
    "Stage",
]
