// What the parts of COIN-OR ask of a system that is not looked at by `configure`.
#pragma once

#define COIN_C_FINITE std::isfinite
#define COIN_C_ISNAN std::isnan
#define COIN_HAS_OSICLP 1

#define HAVE_CFLOAT 1
#define HAVE_CINTTYPES 1
#define HAVE_CMATH 1
#define HAVE_CSTDINT 1
#define HAVE_INTTYPES_H 1
#define HAVE_STDINT_H 1
#define HAVE_STDLIB_H 1
#define HAVE_STRING_H 1
#define HAVE_UNISTD_H 1
