# Completion of candlemark for bash. It asks the program for its questions and options, so that it
# never knows others than the program does.
_candlemark() {
    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} program=${COMP_WORDS[0]}
    COMPREPLY=()
    if [ "$COMP_CWORD" -eq 1 ]; then
        mapfile -t COMPREPLY < <(compgen -W "--help --version $("$program" --help 2>/dev/null |
            sed -n '/^Subcommands:/,/^$/s/^  \([a-z]*\) .*/\1/p')" -- "$word")
        return
    fi
    case $before in
    --as)
        local faces="text json jsonl csv html svg"
        [ "${COMP_WORDS[1]}" != keys ] || faces="text manual schema answer-schema"
        mapfile -t COMPREPLY < <(compgen -W "$faces" -- "$word")
        return
        ;;
    --language)
        mapfile -t COMPREPLY < <(compgen -W "$("$program" sayings --help 2>/dev/null | tr -d '\n' |
            sed -n 's/.*language says: \([a-z, ]*\);.*/\1/p' | tr -d ,)" -- "$word")
        return
        ;;
    --units)
        mapfile -t COMPREPLY < <(compgen -W "metric us" -- "$word")
        return
        ;;
    --clock)
        mapfile -t COMPREPLY < <(compgen -W "24 12" -- "$word")
        return
        ;;
    --weather-from)
        mapfile -t COMPREPLY < <(compgen -d -S / -- "$word")
        return
        ;;
    --files-from | --resume)
        mapfile -t COMPREPLY < <(compgen -f -- "$word")
        return
        ;;
    --set | --seed | --members | --weathers | --reads | --under | --rested | --accuracy | --now | --on | --at | --take | --pack | --at-most | --panels)
        return
        ;;
    esac
    if [ "${word#-}" != "$word" ]; then
        mapfile -t COMPREPLY < <(compgen -W "$("$program" "${COMP_WORDS[1]}" --help 2>/dev/null |
            sed -n 's/^  \(-h,\)\{0,1\}\(--[a-z-]*\).*/\2/p')" -- "$word")
        return
    fi
    mapfile -t COMPREPLY < <(compgen -d -S / -- "$word" || :; compgen -f -X '!*.toml' -- "$word")
    [ "${#COMPREPLY[@]}" -ne 1 ] || [ "${COMPREPLY[0]%/}" = "${COMPREPLY[0]}" ] || compopt -o nospace
}
complete -F _candlemark candlemark
