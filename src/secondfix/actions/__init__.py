"""One module per verb a person can do: documents in, answers out; shared by pages and command line.

The modules are the doors (``secondfix.actions.check`` and so on), so that each verb loads only what it needs.
"""
