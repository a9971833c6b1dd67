"""The door of the store. `secondfix.store.start.begin` comes first: it starts Django and lays the tables.

Faults of people's data are answered (Refused, Conflicting, Known, IdTaken); our own and missing rights are
raised (UnknownError: 404, NotAllowedError: 403). Who acts is an argument, ``by``: the account of the request.
"""

from secondfix.store.accounts import accounts, change_account, create_account, require_writer, set_password
from secondfix.store.answers import (
    BackedUp,
    Conflicting,
    Cover,
    EditRow,
    Found,
    HouseRow,
    IdTaken,
    Issued,
    IssueRow,
    KeptCode,
    Known,
    LastBackup,
    NoRingKeyError,
    NotAllowedError,
    OpenCounts,
    Opened,
    Order,
    Posted,
    Refused,
    Saved,
    Shown,
    Status,
    UnknownError,
)
from secondfix.store.backup import back_up, restore
from secondfix.store.covers import cover, erase_cover, write_cover
from secondfix.store.entries import journal, journal_bytes, journal_size, post_entries
from secondfix.store.finding import find_houses, house_begun_with, keep_counts
from secondfix.store.history import edit_answer, edit_bytes, edit_changes, edit_row, edits, go_back
from secondfix.store.houses import begin_house, bring_back, house_row, houses, open_house, put_away, set_stage
from secondfix.store.issuing import issue, issue_row, issued, issues
from secondfix.store.lists import keep_mapping, latest_mappings, list_mapping
from secondfix.store.models import Account, Right, Stage
from secondfix.store.ring import keep_code, kept_codes, references, show_code, shown
from secondfix.store.saving import save, settle
from secondfix.store.status import status

__all__ = [
    "Account",
    "BackedUp",
    "Conflicting",
    "Cover",
    "EditRow",
    "Found",
    "HouseRow",
    "IdTaken",
    "IssueRow",
    "Issued",
    "KeptCode",
    "Known",
    "LastBackup",
    "NoRingKeyError",
    "NotAllowedError",
    "OpenCounts",
    "Opened",
    "Order",
    "Posted",
    "Refused",
    "Right",
    "Saved",
    "Shown",
    "Stage",
    "Status",
    "UnknownError",
    "accounts",
    "back_up",
    "begin_house",
    "bring_back",
    "change_account",
    "cover",
    "create_account",
    "edit_answer",
    "edit_bytes",
    "edit_changes",
    "edit_row",
    "edits",
    "erase_cover",
    "find_houses",
    "go_back",
    "house_begun_with",
    "house_row",
    "houses",
    "issue",
    "issue_row",
    "issued",
    "issues",
    "journal",
    "journal_bytes",
    "journal_size",
    "keep_code",
    "keep_counts",
    "keep_mapping",
    "kept_codes",
    "latest_mappings",
    "list_mapping",
    "open_house",
    "post_entries",
    "put_away",
    "references",
    "require_writer",
    "restore",
    "save",
    "set_password",
    "set_stage",
    "settle",
    "show_code",
    "shown",
    "status",
    "write_cover",
]
