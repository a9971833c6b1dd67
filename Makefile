# run: the demo house through the job into out/, then the pages until Ctrl-C; ONCE=1 make run stops after the job
# test: all that CI runs    test-deep: thousands of random cases
# lint: without the tests    format: mend the layout    bench: figures into out/bench.json    lock: new versions
PYTHON ?= python3.11
BIN := .venv/bin
FULL = PYTHON=$(PYTHON) sh requirements/install.sh test
AGAIN = $(MAKE) --no-print-directory --keep-going

.PHONY: run test test-deep lint format bench lock style types contracts chromium suite

run:
	@PYTHON=$(PYTHON) sh requirements/install.sh run
	@$(BIN)/secondfix demo --out out
ifndef ONCE
	@echo; $(BIN)/secondfix serve
endif

test:
	@start=$$(date +%s); $(FULL) && $(AGAIN) style types contracts chromium suite; ended=$$?; \
	echo "make test: $$(($$(date +%s) - start)) s in all"; exit $$ended

test-deep:
	@$(FULL)
	HYPOTHESIS_PROFILE=deep $(BIN)/pytest -q -n 2 -m deep --durations=20

lint:
	@$(FULL)
	@$(AGAIN) style types contracts

format:
	@$(FULL)
	$(BIN)/ruff check --fix-only --quiet .
	$(BIN)/ruff format --quiet .

bench:
	@$(FULL)
	$(BIN)/python -m bench.run out/bench.json

# uv is the maker's tool alone (pip install uv); no address may reach a lock.
LOCK = UV_PYTHON_DOWNLOADS=never uv pip compile pyproject.toml --universal --python-version 3.11 --quiet \
	--generate-hashes --no-emit-index-url --no-emit-find-links --no-header --no-annotate --extra build
lock:
	$(LOCK) --extra test -o requirements/test.txt
	$(LOCK) -c requirements/test.txt -o requirements/run.txt

# The parts of make test; each supposes that .venv is laid.
style:
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .
types:
	$(BIN)/mypy
contracts:
	$(BIN)/lint-imports --no-logo --cache-dir .import_linter_cache
chromium:
	@sh requirements/chromium.sh
suite:
	$(BIN)/pytest -q -n 2 --cov --cov-report=term:skip-covered --durations=20
