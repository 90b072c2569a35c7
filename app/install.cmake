# What `cmake --install` lays down, and the Debian package that `cpack` makes of it (generator Ninja: it builds nothing more).
# Both hold the two programs, which carry all content in themselves; menu entry, icons, MIME type and AppStream data in the places
# of the freedesktop specifications; manual pages; and in share/doc the notices that licences ask for.
include(GNUInstallDirs)
set(install_data ${CMAKE_SOURCE_DIR}/resources/install)
set(icons ${CMAKE_SOURCE_DIR}/resources/icons)
set(app_id arpa.home.raphe) # why: see raphe.metainfo.xml

install(TARGETS raphe raphe-batch RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(FILES ${install_data}/raphe.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${install_data}/raphe.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo RENAME ${app_id}.metainfo.xml)
install(FILES ${install_data}/raphe-mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages RENAME raphe.xml)
install(FILES ${icons}/raphe.svg DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps)
foreach(size 48 128 256)
    install(FILES ${icons}/raphe-${size}.png
        DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/${size}x${size}/apps RENAME raphe.png)
endforeach()

# The notices as text: whose work, which licence, what was changed; then the licences with their words where we have them.
function(raphe_write_copyright out)
    file(READ ${CMAKE_SOURCE_DIR}/resources/notices.json notices)
    set(text "Raphe\n\nCopyright: 2026 the Raphe developers\n\nNo licence has been chosen for Raphe itself yet.\n")
    string(APPEND text "\nIt uses the work of others:\n")
    string(JSON count LENGTH "${notices}" notices)
    math(EXPR last "${count} - 1")
    foreach(i RANGE ${last})
        foreach(field what who licence source changed)
            string(JSON ${field} GET "${notices}" notices ${i} ${field})
        endforeach()
        string(APPEND text "\n${what}\n  ${who}\n  Licence: ${licence}\n  Source: ${source}\n  ${changed}\n")
        string(JSON notice ERROR_VARIABLE none GET "${notices}" notices ${i} notice)
        if(NOT none)
            string(APPEND text "  ${notice}\n")
        endif()
    endforeach()
    string(APPEND text "\nThe licences:\n")
    string(JSON count LENGTH "${notices}" licences)
    math(EXPR last "${count} - 1")
    foreach(i RANGE ${last})
        foreach(field id name reference)
            string(JSON ${field} GET "${notices}" licences ${i} ${field})
        endforeach()
        string(APPEND text "\n${id}: ${name}\n  ${reference}\n")
        string(JSON file ERROR_VARIABLE none GET "${notices}" licences ${i} text)
        if(NOT none AND id STREQUAL "Apache-2.0") # Debian has it at one place for all
            string(APPEND text "  On Debian /usr/share/common-licenses/Apache-2.0\n")
        elseif(NOT none)
            file(READ ${CMAKE_SOURCE_DIR}/resources/licences/${file} words)
            string(APPEND text "\n${words}")
        endif()
    endforeach()
    file(CONFIGURE OUTPUT ${out} CONTENT "${text}" @ONLY)
endfunction()
set(made ${CMAKE_CURRENT_BINARY_DIR}/install)
raphe_write_copyright(${made}/copyright)
install(FILES ${made}/copyright DESTINATION ${CMAKE_INSTALL_DOCDIR})
file(GLOB licences CONFIGURE_DEPENDS ${CMAKE_SOURCE_DIR}/resources/licences/*.txt)
install(FILES ${licences} DESTINATION ${CMAKE_INSTALL_DOCDIR}/licences)

# Debian wants these compressed; gzip -n writes no time.
function(raphe_install_compressed source name destination)
    execute_process(COMMAND gzip -9nc ${source} OUTPUT_FILE ${made}/${name}.gz COMMAND_ERROR_IS_FATAL ANY)
    install(FILES ${made}/${name}.gz DESTINATION ${destination})
endfunction()
raphe_install_compressed(${install_data}/changelog changelog ${CMAKE_INSTALL_DOCDIR})
foreach(page raphe.1 raphe-batch.1)
    raphe_install_compressed(${install_data}/${page} ${page} ${CMAKE_INSTALL_MANDIR}/man1)
    set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${install_data}/${page})
endforeach()
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS
    ${install_data}/changelog ${CMAKE_SOURCE_DIR}/resources/notices.json ${licences})

# The package. Its times are that of the changelog's newest entry, so that the same sources make the same file.
file(STRINGS ${install_data}/changelog signature REGEX "^ -- .*>  " LIMIT_COUNT 1)
string(REGEX REPLACE "^ -- (.*>)  .*" "\\1" maintainer "${signature}")
string(REGEX REPLACE "^.*>  " "" release_time "${signature}")
execute_process(COMMAND date -u -d ${release_time} +%s
    OUTPUT_VARIABLE release_time OUTPUT_STRIP_TRAILING_WHITESPACE COMMAND_ERROR_IS_FATAL ANY)
file(WRITE ${made}/cpack-time.cmake
    "if(NOT DEFINED ENV{SOURCE_DATE_EPOCH})\n    set(ENV{SOURCE_DATE_EPOCH} ${release_time})\nendif()\n")
set(CPACK_PROJECT_CONFIG_FILE ${made}/cpack-time.cmake)
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME raphe)
set(CPACK_PACKAGE_VENDOR "Raphe developers")
set(CPACK_PACKAGE_CONTACT "${maintainer}")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "findings and treatment of hands-on therapists on one drawing of the body")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
    "Keeps on one drawing of the body where a patient has pain, what the hands\nfind, what is tied to it, what was done and what changed, in one sealed\nfile; prints a page for the patient, a note and a letter. With a program\nfor scripts (raphe-batch). It assists a trained practitioner; follow local\nlaw, scope of practice and licensed care.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
    OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE) # whatever the umask
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
# What no library names: the typeface, and the driver that Qt loads for the practice file.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "fonts-lato, libqt6sql6-sqlite")
# A voice for spoken prompts, and windows without X11; all else works without them.
set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-speech-flite-plugin, qt6-wayland")
include(CPack)
