# What is missing is installed first (as root, by apt and pip); see tools/.
PYTHON := /usr/bin/python3
export LC_ALL := C.UTF-8

.PHONY: help demo test test-gui test-hosts lint hosts bench ci clean

help:
	@echo "make demo        build the example closet, with its cut layout and papers"
	@echo "make test        the tests, on this machine's FreeCAD"
	@echo "make test-gui    the tests that drive FreeCAD's windows, on a virtual screen"
	@echo "make hosts       get the FreeCADs that this machine does not have (0.20, 1.0, 1.1)"
	@echo "make test-hosts  all tests, with and without a screen, on all of those"
	@echo "make lint        style, types and import layers"
	@echo "make bench       how long things take"
	@echo "make ci          all of it, as .ci/run does"
	@echo "make clean       remove what was built in this folder"

demo:
	@tools/setup.sh run
	$(PYTHON) -m closetbench demo

test:
	@tools/setup.sh test
	CLOSETBENCH_REQUIRE_FREECAD=1 $(PYTHON) -m pytest

test-gui:
	@tools/setup.sh screen
	CLOSETBENCH_REQUIRE_FREECAD=1 $(PYTHON) -m pytest -m gui

hosts:
	@tools/hosts.sh build

test-hosts: hosts
	tools/hosts.sh pytest -m "gui or not gui"
	$(MAKE) test-gui

lint:
	@tools/lint.sh

bench:
	@tools/setup.sh screen
	set -e; for file in benchmarks/bench_*.py; do echo "== $$file"; $(PYTHON) "$$file"; done

ci:
	bash .ci/run

clean:
	rm -rf build .venv .hypothesis .pytest_cache .mypy_cache .ruff_cache .import_linter_cache
	find . -name __pycache__ -prune -exec rm -rf {} +
