"""check_watch.py SHEERPOLE FOLDER: what `sheerpole watch` answers, and whom it refuses, over sockets as they are.

FOLDER is made anew. The page is a stand-in with the two places that the program looks for. The last line is "N answers, M wrong"."""

import hashlib
import json
import os
import pathlib
import re
import shutil
import signal
import socket
import subprocess
import sys
import time
import urllib.parse

PAGE = """<!doctype html><html lang="en"><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'none'"></head>
<body><script type="application/json" id="given">null</script><script type="text/plain" id="core-script"></script></body></html>
"""
BOAT = 'language 1\n\nboat "Second Wind" {\n}\n'
LIBRARY = "language 1\n"


def sum_of(text):
    return hashlib.sha256(text.encode()).hexdigest()


class Watched:
    """The program over a folder, and plain requests to it."""

    def __init__(self, program, *arguments, cwd=None):
        self.process = subprocess.Popen([program, "watch", *arguments], stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True, cwd=cwd)
        first = self.process.stdout.readline()
        found = re.fullmatch(r"http://127\.0\.0\.1:(\d+)/([0-9a-f]{64})/\n", first)
        if not found:
            sys.exit(f"no address but {first!r}: {self.process.stderr.read()}")
        self.port, self.token = int(found[1]), found[2]
        self.host = f"127.0.0.1:{self.port}"
        self.origin = f"http://{self.host}"

    def raw(self, data, seconds=10):
        """What comes back for these bytes, until the other side ends it or half a second nothing comes."""
        with socket.create_connection(("127.0.0.1", self.port), timeout=seconds) as there:
            try:
                there.sendall(data)
            except (BrokenPipeError, ConnectionResetError):
                pass
            there.settimeout(seconds)
            answer = b""
            try:
                while True:
                    piece = there.recv(65536)
                    if not piece:
                        break
                    answer += piece
            except (TimeoutError, ConnectionResetError):
                pass
        return answer

    def ask(self, method, target, fields=None, body="", token=True, host=None):
        """Status and text of the answer."""
        whole = f"/{self.token}/{target}" if token else target
        all_fields = {"Host": self.host if host is None else host, "Connection": "close", **(fields or {})}
        if body:
            all_fields.setdefault("Content-Length", str(len(body.encode())))
        head = f"{method} {whole} HTTP/1.1\r\n" + "".join(f"{name}: {value}\r\n" for name, value in all_fields.items()) + "\r\n"
        answer = self.raw((head + body).encode())
        head, _, rest = answer.partition(b"\r\n\r\n")
        status = head.split(b" ", 2)[1] if head.startswith(b"HTTP/") else b"0"
        return int(status), rest.decode(errors="replace"), head.decode(errors="replace")

    def put(self, name, text, was, **more):
        fields = {"Origin": self.origin, **({"If-Match": f'"{was}"'} if was else {"If-None-Match": "*"}), **more}
        return self.ask("PUT", f"file/{name}", fields, text)[0]

    def files(self):
        return json.loads(self.ask("GET", "files")[1])

    def end(self, how=signal.SIGTERM):
        self.process.send_signal(how)
        return self.process.wait(timeout=10)


def listens_on(port):
    """Addresses, as the system writes them, that somebody listens on at this port (proc(5))."""
    found = []
    for table in ("/proc/net/tcp", "/proc/net/tcp6"):
        if os.path.exists(table):
            for line in pathlib.Path(table).read_text().splitlines()[1:]:
                address, state = line.split()[1], line.split()[3]
                if state == "0A" and int(address.split(":")[1], 16) == port:
                    found.append(address.split(":")[0])
    return found


def main():
    program, top = os.path.abspath(sys.argv[1]), pathlib.Path(sys.argv[2])
    shutil.rmtree(top, ignore_errors=True)
    rigs = top / "rigs"
    (rigs / "parts").mkdir(parents=True)
    (rigs / ".hidden").mkdir()
    page = top / "page.html"
    page.write_text(PAGE)
    secret = top / "secret.rig"
    secret.write_text("language 1\n# secret\n")
    boat = rigs / "boat.rig"
    boat.write_text(BOAT)
    (rigs / "parts/lines.rig").write_text(LIBRARY)
    (rigs / "notes.txt").write_text("mine\n")
    (rigs / ".hidden/inside.rig").write_text(LIBRARY)
    (rigs / ".dot.rig").write_text(LIBRARY)
    (rigs / "bytes.rig").write_bytes(b"language 1\n\xff\xfe\n")
    (rigs / "out.rig").symlink_to(secret)
    (rigs / "in.rig").symlink_to("parts/lines.rig")
    (rigs / "way-out").symlink_to(top)

    wrong = []
    count = 0

    def right(what, found, expected):
        nonlocal count
        count += 1
        if found != expected:
            wrong.append(f"{what}: {found!r}, not {expected!r}")

    watched = Watched(program, str(boat), "--page", str(page))
    right("the loopback address and no other", listens_on(watched.port), ["0100007F"])

    status, text, head = watched.ask("GET", "")
    right("the page", status, 200)
    right("it may ask its server and nobody else", "content=\"default-src 'none'; connect-src 'self'; script-src" in text, True)
    right("it is told that it is served", '"given">{"folder":true}</script>' in text.replace(" ", "", 0), True)
    right("nobody keeps or frames it", all(each in head for each in ("no-store", "nosniff", "DENY", "no-referrer")), True)
    files = watched.files()
    right("the rig files", sorted(files["files"]), ["boat.rig", "in.rig", "parts/lines.rig"])
    right("the boat that was named", files["boat"], "boat.rig")
    right("what is not shown", [each["file"] for each in files["left_out"]], ["out.rig", "bytes.rig"])
    right("its text and sum", files["files"]["boat.rig"], {"text": BOAT, "sum": sum_of(BOAT)})

    # Strangers.
    for what, target in {"no token": "/", "half a token": f"/{watched.token[:40]}/", "another": f"/{'0' * 64}/files", "no end": f"/{watched.token}"}.items():
        right(what, watched.ask("GET", target, token=False)[0], 403)
    for host in ("localhost:80", "rig.example", f"rig.example:{watched.port}", f"localhost:{watched.port}", "127.0.0.1", f"127.0.0.1:{watched.port}.rig.example", ""):
        right(f"host {host!r}", watched.ask("GET", "files", host=host)[0], 400 if host == "" and False else 403)
    right("two hosts", watched.ask("GET", "files", {"Host ": "rig.example", "host": watched.host})[0] in (400, 403), True)
    for origin in ("http://rig.example", "null", f"http://127.0.0.1:{watched.port + 1}", f"https://{watched.host}", f"http://localhost:{watched.port}"):
        right(f"origin {origin}", watched.ask("GET", "files", {"Origin": origin})[0], 403)
        right(f"to write, origin {origin}", watched.put("boat.rig", "x\n", sum_of(BOAT), Origin=origin), 403)
    for site in ("cross-site", "same-site"):
        right(f"from {site}", watched.ask("GET", "files", {"Sec-Fetch-Site": site})[0], 403)
    right("to write, from nowhere", watched.ask("PUT", "file/boat.rig", {"If-Match": f'"{sum_of(BOAT)}"'}, "x\n")[0], 403)
    right("an address of somebody else's", watched.ask("GET", f"http://rig.example/{watched.token}/files", token=False)[0] in (400, 403), True)
    for method in ("POST", "DELETE", "TRACE", "OPTIONS", "HEAD", "PATCH", "BREW"):
        right(method, watched.ask(method, "files")[0] in (400, 405, 501), True)

    # Names that are none.
    for name in ("../secret.rig", "..%2fsecret.rig", "%2e%2e/secret.rig", "%2e%2e%2fsecret.rig", "parts/../../secret.rig", "/etc/passwd", "%2fetc%2fpasswd", "out.rig",
                 "way-out/secret.rig", ".dot.rig", ".hidden/inside.rig", "notes.txt", "boat.rig%00", "boat.rig%0a", "..%5csecret.rig", "parts", "", "%", "%zz", ".rig", "parts/.rig",
                 "nowhere/new.rig", "boat.rig/new.rig", "boat.rig/", "./boat.rig", "parts//lines.rig"):
        for was in (sum_of("language 1\n# secret\n"), ""):
            right(f"to write to {name!r}", watched.put(name, "language 1\n", was) in (404, 412), True)
    right("nothing was written", [secret.read_text(), sorted(each.name for each in top.iterdir())], ["language 1\n# secret\n", ["page.html", "rigs", "secret.rig"]])
    for target in ("file/boat.rig", "files/", "../files", "changes2", "file"):
        right(f"no such thing: {target}", watched.ask("GET", target)[0], 404)

    # Writing.
    changed = BOAT + "# changed\n"
    right("to write over another", watched.put("boat.rig", changed, sum_of("other")), 412)
    right("to write over one without a word", watched.ask("PUT", "file/boat.rig", {"Origin": watched.origin}, changed)[0], 428)
    right("to make one that is there", watched.put("boat.rig", changed, ""), 412)
    right("as it was", boat.read_text(), BOAT)
    os.chmod(boat, 0o640)
    right("to write", watched.put("boat.rig", changed, sum_of(BOAT)), 200)
    right("it is written", boat.read_text(), changed)
    right("with its permissions", boat.stat().st_mode & 0o777, 0o640)
    right("to write once more by the old sum", watched.put("boat.rig", BOAT, sum_of(BOAT)), 412)
    right("to write where a link leads inside", watched.put("in.rig", "language 1\n# by a link\n", sum_of(LIBRARY)), 200)
    right("the link stays", [(rigs / "in.rig").is_symlink(), (rigs / "parts/lines.rig").read_text()], [True, "language 1\n# by a link\n"])
    right("to make one", watched.put(urllib.parse.quote("parts/n\u00e4he #1.rig"), "language 1\n", ""), 200)
    right("it is there", (rigs / "parts/n\u00e4he #1.rig").read_text(), "language 1\n")
    right("and nothing else", sorted(each.name for each in (rigs / "parts").iterdir()), ["lines.rig", "n\u00e4he #1.rig"])
    right("no text", watched.ask("PUT", "file/boat.rig", {"Origin": watched.origin, "If-Match": f'"{sum_of(changed)}"'}, "a\0b")[0], 415)
    too_long = "# " + "x" * (5 * 1024 * 1024)
    right("too long", watched.put("boat.rig", too_long, sum_of(changed)) in (0, 413), True)
    right("said to be too long", watched.ask("PUT", "file/boat.rig", {"Origin": watched.origin, "Content-Length": "99999999999"})[0] in (0, 400, 413), True)
    right("after all of it, as it was", boat.read_text(), changed)

    # Bytes that are no request.
    for name, data in {"noise": b"\x00\xff" * 500, "a field without end": b"GET / HTTP/1.1\r\nX: " + b"a" * 40000, "many fields": b"GET / HTTP/1.1\r\n" + b"X: y\r\n" * 9000 + b"\r\n", "a long address": b"GET /" + b"a" * 40000 + b" HTTP/1.1\r\n\r\n",
                       "no version": b"GET /\r\n\r\n", "minus": f"PUT /{watched.token}/file/boat.rig HTTP/1.1\r\nHost: {watched.host}\r\nContent-Length: -5\r\n\r\n".encode()}.items():
        answer = watched.raw(data, seconds=2)
        right(name, b" 200 " in answer.split(b"\r\n")[0], False)
    right("it answers still", watched.ask("GET", "files")[0], 200)

    # Who listens is told.
    with socket.create_connection(("127.0.0.1", watched.port), timeout=10) as listener:
        listener.sendall(f"GET /{watched.token}/changes HTTP/1.1\r\nHost: {watched.host}\r\n\r\n".encode())

        def heard(word, seconds=8):
            listener.settimeout(seconds)
            said = b""
            while word not in said:
                piece = listener.recv(4096)
                if not piece:
                    break
                said += piece
            return word in said

        right("told at once", heard(b"event: changed"), True)
        time.sleep(0.5)
        boat.write_text(BOAT)
        right("told of a change", heard(b"event: changed"), True)
    boat.write_text(changed)  # nobody listens any more
    time.sleep(0.7)
    right("who went away is no harm", watched.ask("GET", "files")[0], 200)
    listeners = [socket.create_connection(("127.0.0.1", watched.port), timeout=10) for _ in range(40)]
    for each in listeners:
        each.sendall(f"GET /{watched.token}/changes HTTP/1.1\r\nHost: {watched.host}\r\n\r\n".encode())
    last = listeners[-1].recv(4096)
    right("so many that it is enough", b" 503 " in last.split(b"\r\n")[0], True)
    right("and the others are answered", watched.ask("GET", "files")[0], 200)
    right("ends when it is told to", watched.end(), 0)
    for each in listeners:
        each.close()
    right("with Ctrl-C too", Watched(program, "--page", str(page), cwd=rigs).end(signal.SIGINT), 0)

    # The command line.
    port = 20000 + os.getpid() % 20000
    held = socket.socket()
    held.bind(("127.0.0.1", port))
    held.listen()
    for arguments, words in {
        ("rigs", "--port", str(port), "--page", "page.html"): "cannot listen on port",
        ("rigs", "--port", "70000", "--page", "page.html"): "",
        ("nowhere",): "there is no file or folder nowhere",
        ("page.html",): "is no rig file",
        ("rigs", "--page", "secret.rig"): "is not the offline page",
        ("rigs", "--page", "nowhere.html"): "cannot read the page",
        ("rigs/bytes.rig", "--page", "page.html"): "cannot be shown as text",
        ("rigs/.hidden", "--page", "page.html", "--address", "0.0.0.0"): "has no option",
    }.items():
        done = subprocess.run([program, "watch", *arguments], cwd=top, capture_output=True, text=True, timeout=20)
        right(f"watch {' '.join(arguments)}", [done.returncode, words in done.stderr], [2, True])
    held.close()
    empty = top / "empty"
    empty.mkdir()
    done = subprocess.run([program, "watch", str(empty), "--page", str(page)], capture_output=True, text=True, timeout=20)
    right("a folder without rigs", [done.returncode, "there is no rig file in" in done.stderr], [2, True])

    for each in wrong:
        print(each)
    print(f"{count} answers, {len(wrong)} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
