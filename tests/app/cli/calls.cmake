# How the program itself answers: exit code and one sentence. -DCLI=<bathside-cli> -DVERSION=<x.y.z>
cmake_minimum_required(VERSION 3.25)

function(expect code pattern)
  execute_process(COMMAND ${CLI} ${ARGN} INPUT_FILE /dev/null RESULT_VARIABLE got OUTPUT_VARIABLE out ERROR_VARIABLE err)
  if(NOT got EQUAL code OR NOT "${out}${err}" MATCHES "${pattern}")
    message(FATAL_ERROR "bathside-cli ${ARGN}: exit ${got}, wanted ${code} and '${pattern}':\n${out}${err}")
  endif()
endfunction()

expect(2 "^bathside-cli: a verb is missing\\. See bathside-cli --help\\.\n$")
expect(2 "^bathside-cli: there is no verb colour\\. " colour)
expect(2 "^bathside-cli: there is no verb --colour\\. " --colour)
expect(2 "^bathside-cli: .*--colour" reading - --colour)
expect(2 "^bathside-cli: FILE is required\\. " reading)
expect(2 "^bathside-cli: standard input: found a fault at line 1, column 1, expected JSON in UTF-8\\.\n$" reading -)
expect(0 "reading +Corrected value" --help)
expect(0 "1 outside, 2 unusable input" reading --help)
expect(0 "^${VERSION}\n$" --version)
