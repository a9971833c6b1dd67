"""The shapes of answers, for the description of the calls; docs/json.md says what each key means."""
