"""How the program was built against faults in it, read from its own file by readelf (binutils)."""

import os
import re
import subprocess
import unittest

PROGRAM = os.environ["CREASEWRIGHT_PROGRAM"]


def readelf(*arguments):
    done = subprocess.run(["readelf", "--wide", *arguments, PROGRAM], capture_output=True, text=True, check=True)
    return done.stdout


@unittest.skipUnless(os.environ.get("CREASEWRIGHT_HARDENED") == "1", "built without optimization or with sanitizers")
class Hardening(unittest.TestCase):
    def test_tables_of_addresses_are_read_only_from_the_start(self):
        self.assertIn("GNU_RELRO", readelf("--program-headers"))
        self.assertRegex(readelf("--dynamic"), r"BIND_NOW|FLAGS.*NOW")

    def test_it_is_loaded_anywhere_and_its_stack_is_no_code(self):
        self.assertRegex(readelf("--file-header"), r"Type:\s+DYN")
        self.assertRegex(readelf("--program-headers"), r"GNU_STACK.*\bRW\s")

    def test_canaries_and_checked_copies_are_used(self):
        symbols = readelf("--dyn-syms")
        self.assertIn("__stack_chk_fail", symbols)
        self.assertTrue(re.search(r"__\w+_chk\b", symbols))


if __name__ == "__main__":
    unittest.main()
