"""The journal: what happened on site, folded over a revision into the as-built house.

Entries are appended and never changed. Who knew what decides which are current; clocks never do.
"""

from secondfix.journal.adoption import Adoption, adopt
from secondfix.journal.air import AirHeard, HeardOnAir
from secondfix.journal.as_json import as_built_as_json, entry_as_json, tests_as_json
from secondfix.journal.asbuilt import AsBuilt, as_built
from secondfix.journal.check_presses import CAUTION
from secondfix.journal.checking import check
from secondfix.journal.crossing import Crossing
from secondfix.journal.deeds import Fitted, Joined, Named, PurposeSet
from secondfix.journal.differences import Difference
from secondfix.journal.entry import Entry, Unknown
from secondfix.journal.facts import FunctionTested, Measured
from secondfix.journal.folding import Conflict, Folded, fold, history
from secondfix.journal.journal import Journal, as_lines, journal_of, latest, merge
from secondfix.journal.kinds import KINDS
from secondfix.journal.lines import LARGEST_JOURNAL_BYTES, LONGEST_LINE_BYTES, as_line
from secondfix.journal.marks import SnagRaised
from secondfix.journal.paths import path_of
from secondfix.journal.pressing import FunctionTest, Press, Worked, function_test
from secondfix.journal.read import new_entry, read_journal
from secondfix.journal.remarks import Remark
from secondfix.journal.retest import fitted_since
from secondfix.journal.rules import RULES
from secondfix.journal.scene_test import SceneTest, scene_tests
from secondfix.journal.sorting import Told
from secondfix.journal.subject import COLLECTION_OF, Subject, subject_of

__all__ = [
    "CAUTION",
    "COLLECTION_OF",
    "KINDS",
    "LARGEST_JOURNAL_BYTES",
    "LONGEST_LINE_BYTES",
    "RULES",
    "Adoption",
    "AirHeard",
    "AsBuilt",
    "Conflict",
    "Crossing",
    "Difference",
    "Entry",
    "Fitted",
    "Folded",
    "FunctionTest",
    "FunctionTested",
    "HeardOnAir",
    "Joined",
    "Journal",
    "Measured",
    "Named",
    "Press",
    "PurposeSet",
    "Remark",
    "SceneTest",
    "SnagRaised",
    "Subject",
    "Told",
    "Unknown",
    "Worked",
    "adopt",
    "as_built",
    "as_built_as_json",
    "as_line",
    "as_lines",
    "check",
    "entry_as_json",
    "fitted_since",
    "fold",
    "function_test",
    "history",
    "journal_of",
    "latest",
    "merge",
    "new_entry",
    "path_of",
    "read_journal",
    "scene_tests",
    "subject_of",
    "tests_as_json",
]
