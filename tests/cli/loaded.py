"""Runs the program many times without loading it anew (loaded_program.cpp): most runs of the tests are loading."""

import atexit
import os
import signal
import socket
import struct
import subprocess

_loaded = {}  # by process: one that was forked from another has its own
MOST_BYTES = 100_000  # of arguments in a message


@atexit.register
def _end():
    process, ours = _loaded.pop(os.getpid(), (None, None))
    if process is not None:
        ours.close()
        process.wait(10)


def _connection():
    process, ours = _loaded.get(os.getpid(), (None, None))
    if process is None or process.poll() is not None:
        ours, theirs = socket.socketpair(socket.AF_UNIX, socket.SOCK_SEQPACKET)
        process = subprocess.Popen([os.environ["CREASEWRIGHT_LOADED"]], stdin=theirs, start_new_session=True)
        theirs.close()
        _loaded[os.getpid()] = process, ours
    return process, ours


def run(program, arguments, timeout=60):
    """What subprocess.run([program, *arguments], capture_output=True, text=True, timeout=timeout) gives. It starts the
    program itself where no loaded one is named by CREASEWRIGHT_LOADED."""
    words = [str(program), *map(str, arguments)]
    message = b"".join(os.fsencode(word) + b"\0" for word in words)
    if "CREASEWRIGHT_LOADED" not in os.environ or len(message) > MOST_BYTES:
        return subprocess.run(words, capture_output=True, text=True, timeout=timeout)
    process, ours = _connection()
    with open(os.memfd_create("out"), "w+b") as out, open(os.memfd_create("err"), "w+b") as err:
        socket.send_fds(ours, [message], [0, out.fileno(), err.fileno()])
        ours.settimeout(timeout)
        try:
            answer = ours.recv(4)
        except TimeoutError:
            os.killpg(process.pid, signal.SIGKILL)
            process.wait()
            raise subprocess.TimeoutExpired(words, timeout) from None
        if len(answer) != 4:
            raise RuntimeError(f"no answer to {words}")
        ended = os.waitstatus_to_exitcode(struct.unpack("i", answer)[0])
        said = []
        for file in (out, err):
            file.seek(0)
            said.append(file.read().decode().replace("\r\n", "\n").replace("\r", "\n"))
    return subprocess.CompletedProcess(words, ended, *said)
