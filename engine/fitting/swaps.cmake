# swaps.toml is compiled in, so that the program carries it with it.
set(swaps_source ${CMAKE_CURRENT_BINARY_DIR}/swaps_text.cpp)
add_custom_command(
    OUTPUT ${swaps_source}
    COMMAND ${CMAKE_COMMAND} -D INPUT=${CMAKE_CURRENT_SOURCE_DIR}/swaps.toml
            -D OUTPUT=${swaps_source} -P ${CMAKE_CURRENT_SOURCE_DIR}/embed_swaps.cmake
    DEPENDS swaps.toml embed_swaps.cmake
    VERBATIM)
target_sources(candlemark_fitting PRIVATE ${swaps_source})
