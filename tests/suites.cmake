# Read by ctest: every suite of `program` that `filter` lets through becomes a test with these `properties` and
# this `environment`.
execute_process(COMMAND ${program} --gtest_list_tests --gtest_filter=${filter}
    OUTPUT_VARIABLE listed COMMAND_ERROR_IS_FATAL ANY)
string(REPLACE "\n" ";" listed "${listed}")
set(suites "")
foreach(line IN LISTS listed)
    if(line MATCHES "^([^ ]+)\\.( |$)")
        set(suite ${CMAKE_MATCH_1})
        list(APPEND suites ${suite})
        set(tests_of_${suite} 0)
    elseif(line MATCHES "^  [^ ]")
        math(EXPR tests_of_${suite} "${tests_of_${suite}} + 1")
    endif()
endforeach()
foreach(suite IN LISTS suites)
    add_test(${suite} ${program} --gtest_filter=${suite}.*)
    set_tests_properties(${suite} PROPERTIES COST ${tests_of_${suite}} ENVIRONMENT "${environment}" ${properties})
endforeach()
