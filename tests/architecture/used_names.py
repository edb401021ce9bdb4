"""What a file uses it includes, itself or through what it includes.

Compiling every file alone shows the same and more, but takes long, so that a run from nothing compiles a share of the files only.
Here all of them are read as text: names of the standard library by the table below, and the types of the project by where
they are declared.
"""

import functools
import re

import cpp_text
import tree
from lone_files import Reached

NAME = "what is used is included"
# A name that more than one header declares is left to the compiler.
STANDARD = {
    "algorithm": "adjacent_find all_of any_of binary_search clamp copy_if count_if equal_range fill find_if find_if_not is_sorted "
    "lexicographical_compare lower_bound max_element min_element minmax_element none_of nth_element partial_sort partition "
    "replace reverse set_difference set_intersection set_union sort stable_partition stable_sort unique upper_bound",
    "array": "array to_array",
    "atomic": "atomic",
    "charconv": "from_chars to_chars",
    "chrono": "chrono",
    "cmath": "abs acos asin atan atan2 ceil cos erf exp floor fmod hypot isfinite isinf isnan log10 lround llround pow round sin "
    "sqrt tan trunc",
    "cstdint": "int8_t int16_t int32_t int64_t uint8_t uint16_t uint32_t uint64_t",
    "deque": "deque",
    "filesystem": "filesystem",
    "fstream": "ifstream ofstream fstream",
    "functional": "function reference_wrapper",
    "iomanip": "setw setprecision setfill",
    "initializer_list": "initializer_list",
    "limits": "numeric_limits",
    "map": "map multimap",
    "memory": "make_shared make_unique shared_ptr unique_ptr weak_ptr",
    "mutex": "lock_guard mutex unique_lock scoped_lock",
    "numbers": "numbers",
    "numeric": "accumulate iota partial_sum",
    "optional": "nullopt optional",
    "random": "mt19937 mt19937_64",
    "regex": "regex smatch regex_match regex_search",
    "set": "set multiset",
    "span": "span",
    "sstream": "istringstream ostringstream stringstream",
    "stdexcept": "invalid_argument logic_error out_of_range runtime_error",
    "string": "stod stoi stoul string to_string",
    "string_view": "string_view",
    "thread": "thread jthread",
    "tuple": "apply tuple tuple_size_v",
    "unordered_map": "unordered_map",
    "unordered_set": "unordered_set",
    "utility": "exchange pair",
    "variant": "get_if holds_alternative monostate variant visit",
    "vector": "vector",
}
# Headers of the standard that promise the names of another one.
PROMISED = {"string": {"string_view", "initializer_list"}, "map": {"utility"}, "span": {"array"}, "vector": {"initializer_list"},
            "set": {"initializer_list"}}
HEADER_OF = {name: header for header, names in STANDARD.items() for name in names.split()}
USED = re.compile(r"\bstd::([a-z_0-9]+)")
DECLARED = re.compile(r"^(?:struct|class|enum class|enum) ([A-Z]\w+)\b[^;]*$", re.MULTILINE)
KNOWN = re.compile(r"\b(?:struct|class|enum class|using|typename|enum) (?:\w+::)*([A-Z]\w+)\b")
TYPE = re.compile(r"(?<![\w.>])(?<!::)([A-Z][a-z]\w+)\b(?!\s*\()")


def check(root, build):
    """Findings, one line of text for each file and name."""
    del build
    reached_from = Reached(root)
    code_of = functools.lru_cache(None)(lambda path: cpp_text.take_apart(tree.read(path)).code)
    known_in = functools.lru_cache(None)(lambda path: set(KNOWN.findall(code_of(path))))
    paths = tree.files(root, ["compiler", "plugins"], (".hpp", ".cpp"))
    declared_in = types_declared(root, code_of)
    findings = []
    for path in paths:
        code = code_of(path)
        reached = reached_from(path)
        standard = {name[1:-1] for name in reached if isinstance(name, str)}
        standard |= {also for name in standard for also in PROMISED.get(name, ())}
        wanted = {HEADER_OF[name]: name for name in sorted(set(USED.findall(code)), reverse=True) if name in HEADER_OF}
        findings += [f"{tree.shown(root, path)}:1: uses std::{name} without <{header}>"
                     for header, name in sorted(wanted.items()) if header not in standard]
        # Declared here or in what is included: a type in another, the name alone of an enumeration.
        known = known_in(path).union(*(known_in(one) for one in reached if not isinstance(one, str)))
        findings += [f"{tree.shown(root, path)}:1: uses {name} without {tree.shown(root, declared_in[name])}"
                     for name in sorted(set(TYPE.findall(code)) - known)
                     if name in declared_in and declared_in[name] != path and declared_in[name] not in reached]
    return findings


def types_declared(root, code_of):
    """From a type to the one header that declares it at the top of a namespace; those declared in several are left out."""
    places = {}
    for path in tree.files(root, ["compiler", "plugins"], (".hpp",)):
        for name in DECLARED.findall(code_of(path)):
            places.setdefault(name, set()).add(path)
    return {name: min(where) for name, where in places.items() if len(where) == 1}
