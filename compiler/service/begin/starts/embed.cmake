# Writes the files of this folder as one table of texts, while the compiler is built:
#   cmake -DFOLDER=… -DINTO=start_texts.cpp -P embed.cmake
file(GLOB names RELATIVE "${FOLDER}" "${FOLDER}/ends" "${FOLDER}/hardware" "${FOLDER}/pieces" "${FOLDER}/ways" "${FOLDER}/rigs/*")
list(SORT names)
set(rows "")
foreach(name IN LISTS names)
  file(READ "${FOLDER}/${name}" text)
  string(APPEND rows "    {\"${name}\", R\"text(${text})text\"},\n")
endforeach()
file(WRITE "${INTO}" "#include \"service/begin/starts.hpp\"\n\nnamespace sheerpole {\n\n"
  "std::span<const StartText> start_texts() {\n  static constexpr StartText all[] = {\n" "${rows}" "  };\n  return all;\n}\n\n} // namespace sheerpole\n")
