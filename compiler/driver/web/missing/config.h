// What `configure` would find out for libmd: of SHA-2 it needs nothing.
#pragma once
