"""The drawing register: every sheet of the desk with its number, title and what it is for, in two sentences.

Numbers are those of the printed pack wherever a sheet stands in both.
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Sheet:
    """One sheet: ``name`` is its address's name in the table of urls."""

    name: str
    number: str
    title: str
    says: str


DESK_SHEETS = (
    Sheet(
        "register", "D0/01", "Register of houses",
        "Every house of the firm, how far its job has come and what is open. Choose a house to work on it.",
    ),
    Sheet(
        "new", "D0/02", "A new house",
        "Begin from nothing, from the demo, from a file or from a controller's device list. "
        "What you begin stands in the register at once.",
    ),
    Sheet(
        "away", "D0/03", "Houses put away",
        "Houses taken off the register; everything of them is kept. Bring one back to work on it again.",
    ),
    Sheet(
        "people", "D0/04", "People of this desk",
        "Who may come in. A reader sees everything but codes; a writer also changes it.",
    ),
    Sheet(
        "status", "D0/05", "State of this desk",
        "Where the book is kept and what should be put right about that. Nothing of a house stands here.",
    ),
    Sheet(
        "sign-in", "D0/06", "Sign in",
        "The book is for the people of the firm. Give the name and password that a writer made for you.",
    ),
    Sheet(
        "first", "D0/07", "The first account",
        "Nobody can come in yet. Make the first account: it may change everything and make the others.",
    ),
    Sheet(
        "phone", "D0/09", "This desk on a phone",
        "A phone must trust the desk before it works with it. "
        "Put the desk's own authority on it, once, and open the desk at its address.",
    ),
    Sheet(
        "password", "D0/08", "Another password",
        "Give yourself another password. At least twelve characters, none of the well-known ones.",
    ),
    Sheet(
        "new-list", "D0/10", "A house from a device list",
        "Rooms and devices as a controller lists them, so that a house that stands need not be typed in. "
        "Boxes and wires are then to be surveyed: no list knows them.",
    ),
)  # fmt: skip

_HOUSE_SHEETS = (
    Sheet(
        "plans", "S2/01", "Plans",
        "Each storey from above: rooms, walls, wall boxes, light points and what is open at them. "
        "Choose a symbol to go to what stands there.",
    ),
    Sheet(
        "building", "S2/02", "Rooms, boxes and circuits",
        "What the house is made of, from its storeys to its loads, a table each with a row to add one. "
        "Choose an id to state more of it or to take it out.",
    ),
    Sheet(
        "networks", "S5/01", "Networks and devices",
        "Every device with its model, where it stands and whether radio is likely to carry it. "
        "Choose a model for a place where none stands, or another for one that does.",
    ),
    Sheet(
        "house", "S0/01", "Drawing register",
        "All sheets of this house, and what is open. Choose a sheet to work on it.",
    ),
    Sheet(
        "cover", "S0/02", "Cover sheet",
        "Names and addresses of people, apart from the house, so that they can be erased for good. "
        "They stand in no document, export or history.",
    ),
    Sheet(
        "history", "S9/02", "History and issues",
        "Every edit with who made it, when and what it changed; and what went out under a letter. "
        "Nothing is lost: an earlier edit can be made the house again.",
    ),
    Sheet(
        "keys", "S9/03", "Key ring",
        "Codes that join devices and open networks, sealed, apart from the house, which holds references. "
        "A code is shown only when it is asked for, and to whom stands below.",
    ),
    Sheet(
        "calls", "S9/05", "Calls",
        "The same questions for a program: each call with its address, what it takes and what it answers. "
        "Answers are those of the command line, and rights are those of whoever signed in.",
    ),
    Sheet(
        "checks", "S1/01", "Checks",
        "What is wrong and what cannot be told, with value, limit, source and remedy. "
        "Choose a place to go to its row; nothing here calls a circuit safe.",
    ),
    Sheet(
        "survey", "S1/02", "Survey list",
        "What to look at on site, the looks that settle most answers first. "
        "Print it and write beside each line.",
    ),
    Sheet(
        "assumptions", "S1/03", "Assumptions",
        "What stands in where no standard and no survey speaks, each with range and source. "
        "A value of this house's own changes every answer that leans on it.",
    ),
    Sheet(
        "schedule", "S4/01", "Switch schedule",
        "Every gang a row: what it is for, what it feeds, what its wires are, and the answers beside it. "
        "Fill it in as a sheet or in a spreadsheet; an empty cell means that it is not known.",
    ),
    Sheet(
        "elevations", "S3/01", "Room elevations",
        "Each wall as you face it, plates at true height, with what every button does. "
        "Choose a plate to edit it; numbers in shapes are notes below.",
    ),
    Sheet(
        "function-test", "S8/01", "Function test",
        "What each gang, entry and scene should work, what it was found to work, and what is not yet tested. "
        "Write down what answered; crossed and dead gangs are told with what mends them.",
    ),
    Sheet(
        "as-built", "S8/02", "As-built",
        "Where the house as found on site parts from its design, place by place, and who says so. "
        "Adopt it, and the design becomes what stands on the wall.",
    ),
    Sheet(
        "journal", "S8/03", "Journal",
        "What was done and found on site, entry by entry, by everybody who was there. "
        "Take in files from phones in any order; nothing in it is ever changed or lost.",
    ),
    Sheet(
        "names", "S5/02", "Names",
        "What every entry is to be called, by the policy of this house, and what it was named on site. "
        "Another policy tells what it would rename before it is saved.",
    ),
    Sheet(
        "radio", "S5/04", "Radio",
        "Whether radio carries each device to its controller, and who falls when something goes or trips. "
        "Choose a device, a plug, a circuit or a place, and the plan and the list show what becomes of whom.",
    ),
    Sheet(
        "measured-links", "S5/20", "Measured links",
        "What was heard of whom on site, what that taught of the house, and which link to measure next. "
        "Measure with plates and covers fitted; from five links on, the answers are shown in numbers.",
    ),
    Sheet(
        "channels", "S5/21", "Channels",
        "Who was heard at 2.4 GHz, what that costs each network on every channel, and which is better. "
        "Type the survey row by row, or paste it from a spreadsheet.",
    ),
    Sheet(
        "scenes", "S6/01", "Scene schedule",
        "Causes across, effects down: what each scene really does to every load. "
        "Choose a crossing to read why, or a scene's name to change it.",
    ),
    Sheet(
        "walk", "S7/01", "Order of joining",
        "In which order to isolate, fit, energise, join and test, each device after a parent that stands. "
        "Cautions come first; local code and a licensed person decide.",
    ),
    Sheet(
        "worksheets", "S7/02", "Worksheets",
        "One sheet for each device, in the order of joining, to stand before it with. "
        "Codes never stand here, only their references on the key ring.",
    ),
    Sheet(
        "swap", "S8/04", "Swap",
        "What becomes of every button, name and scene when a failed device is replaced, told beforehand. "
        "Choose the device and what replaces it; nothing is written by asking.",
    ),
    Sheet(
        "reconcile", "S8/05", "Device list",
        "A controller's list held against the book, each difference with the step that mends it. "
        "Say once which column is what; nothing of the list is dropped in silence.",
    ),
    Sheet(
        "papers", "S9/01", "Papers",
        "Every paper and drawing of this house, made of the same answers that the sheets show. "
        "Fill in the title block, choose, and open what was made.",
    ),
)  # fmt: skip

# Sheets that are reached from others and do not stand in the register.
SIDE_SHEETS = (
    Sheet(
        "thing", "S2/03", "In detail",
        "Everything that may be stated of one room, box, circuit, load, place, network or device. "
        "Leave empty what is not known: it stays a question, never a pass.",
    ),
    Sheet(
        "choose", "S5/03", "Which model fits",
        "For one place: the models against which nothing is found, those that cannot be told, those that are "
        "refused and by which rule. Choose one and it stands in the book; the checks have the last word.",
    ),
    Sheet(
        "box", "S4/02", "Wall box",
        "One wall box with its gangs, as a form. "
        "Leave empty what is not known: it stays a question, never a pass.",
    ),
    Sheet(
        "edit", "S9/10", "One edit",
        "What one edit changed, field by field, or why it was set aside. "
        "The house can be made again as it was then.",
    ),
    Sheet(
        "compare", "S9/11", "Two edits beside each other",
        "Every field that differs from one edit to another. Choose any two.",
    ),
    Sheet(
        "issue", "S9/12", "An issue as it went out",
        "The revision that went out under this letter, with its papers. "
        "Its checks are asked under the assumptions that were frozen into it.",
    ),
    Sheet(
        "scene", "S6/02", "Scene",
        "One scene: what starts it, which loads its rules select, what it commands directly. "
        "What an edit would change is told before it is saved.",
    ),
    Sheet(
        "worksheet", "S7/03", "Worksheet",
        "All that one device asks of whoever fits and joins it. Its cautions come before its steps.",
    ),
    Sheet(
        "settle", "S9/09", "Two edits of one field",
        "Somebody changed the same fields since you opened the sheet. "
        "Nothing of either is lost: take a side for each.",
    ),
    Sheet(
        "entry", "S8/06", "An entry",
        "One thing that was done or found on site, as it is written into the journal. "
        "It stands beside what others wrote and takes the place only of what you have seen.",
    ),
    Sheet(
        "page", "S9/07", "A printed page",
        "One page of a paper as it will come out of the printer. "
        "The PDF holds its words, to read aloud or to search.",
    ),
    Sheet(
        "job", "S9/06", "Printing",
        "Papers of a large house take a while and are made aside. "
        "Go on with other sheets meanwhile, or stay and watch until they can be opened.",
    ),
)  # fmt: skip

HOUSE_SHEETS = tuple(sorted(_HOUSE_SHEETS, key=lambda s: s.number))
SHEETS = {sheet.name: sheet for sheet in (*DESK_SHEETS, *HOUSE_SHEETS, *SIDE_SHEETS)}
