# cmake -P leave_out_network.cmake RigParser.cpp OUTPUT
# The generated parser unpacks a network of the grammar at each start of the program, to look further ahead than one token
# where a choice needs that. No choice of our grammar does, and this holds it to that: then the network is left out.
file(READ "${CMAKE_ARGV3}" text)
string(FIND "${text}" "adaptivePredict" ahead)
if(NOT ahead EQUAL -1)
  message(FATAL_ERROR "grammar/RigParser.g4: a choice is not made on the next token alone (see grammar/README.md)")
endif()
set(unpacks "RigParser::Initializer RigParser::_init;")
string(FIND "${text}" "${unpacks}" at)
if(at EQUAL -1)
  message(FATAL_ERROR "The generated parser has another form than expected: it holds no \"${unpacks}\"")
endif()
string(REPLACE "${unpacks}" "" text "${text}")
file(WRITE "${CMAKE_ARGV4}" "${text}")
