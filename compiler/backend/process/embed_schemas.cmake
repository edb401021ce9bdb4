# cmake -DFOLDER=docs/backends -DOUT=file.cpp -P embed_schemas.cmake: the schemas as texts of a program.
set(text "#include \"backend/process/outside_json.hpp\"\n\nnamespace sheerpole {\n\n")
foreach(name describe-reply generate-reply)
  file(READ "${FOLDER}/${name}.schema.json" schema)
  string(REPLACE "-" "_" word "${name}")
  string(APPEND text "const std::string_view ${word}_schema = R\"schema(${schema})schema\";\n")
endforeach()
string(APPEND text "\n} // namespace sheerpole\n")
file(WRITE "${OUT}" "${text}")
