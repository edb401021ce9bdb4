# Completion of sheerpole for bash; made from its command line.
__sheerpole_offer() {
  COMPREPLY=()
  [ -z "$words" ] || mapfile -t COMPREPLY <<<"$words"
  if [ -z "$words" ] && [ -z "$nothing" ] && [[ $word != -* ]]; then
    compopt -o filenames 2>/dev/null
    mapfile -t COMPREPLY < <(compgen -f -- "$word")
  fi
}
_sheerpole() {
  local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]}
  local words= nothing= value= given=0 at
  if [ "$COMP_CWORD" -eq 1 ]; then
    nothing=yes
    words=$(compgen -W 'begin enter check build changes fleet find plan seal verify mend show tidy editor watch page list explain help version -h --help --version' -- "$word")
    __sheerpole_offer
    return
  fi
  for ((at = 2; at < COMP_CWORD; at++)); do
    [[ ${COMP_WORDS[at]} == -* ]] || given=$((given + 1))
  done
  case ${COMP_WORDS[1]} in
    begin)
      case $before in
        --boat) nothing=yes; value=yes ;;
        --rig) words=$(compgen -W 'bowsprit-sloop catamaran cutter discontinuous-sloop fractional-sloop furling-sloop gaff-cutter hydraulic-sloop insulated-sloop jumper-sloop junk ketch leaning-ketch masthead-sloop one-stay runner-sloop schooner split-backstay-sloop tabernacle-sloop tie-rod-sloop trimaran twin-forestay-sloop yawl' -- "$word"); value=yes ;;
        --line) words=$(compgen -W 'wire rope' -- "$word"); value=yes ;;
        --measured-by) words=$(compgen -W 'drawing tape cord' -- "$word"); value=yes ;;
        --mast-height) nothing=yes; value=yes ;;
        --beam) nothing=yes; value=yes ;;
        --base) nothing=yes; value=yes ;;
        --bowsprit-length) nothing=yes; value=yes ;;
        --second-mast-height) nothing=yes; value=yes ;;
        --between-masts) nothing=yes; value=yes ;;
        --lengths) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --boat --rig --line --measured-by --mast-height --beam --base --bowsprit-length --second-mast-height --between-masts --lengths --print --color' -- "$word") ;;
      esac
      ;;
    enter)
      case $before in
        --from) nothing=yes; value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --from --print' -- "$word") ;;
      esac
      ;;
    check)
      case $before in
        --form) words=$(compgen -W 'text lines json sarif junit code-quality' -- "$word"); value=yes ;;
        --fail-on) words=$(compgen -W 'error warning note' -- "$word"); value=yes ;;
        --set) nothing=yes; value=yes ;;
        --as-of) words=$(compgen -W 'designed ordered made fitted' -- "$word"); value=yes ;;
        --shop) nothing=yes; value=yes ;;
        --allow-folder) value=yes ;;
        --print) words=$(compgen -W 'source syntax names rig lengths checked' -- "$word"); value=yes ;;
        --depends) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --form --fail-on --set --as-of --shop --allow-folder --print --depends --color' -- "$word") ;;
      esac
      ;;
    build)
      case $before in
        --into) value=yes ;;
        --only) words=$(compgen -W 'bench-card calendar change-sheet checks cord-map cut-list diagram dry-fit-card emergency-splice-card findings index labels measuring-sheet order-list proof-sheet receiving-card rig-drawing sign-off spool-plan survey-report take-up echo kit-list tune-sheet shop-order' -- "$word"); value=yes ;;
        --since) value=yes ;;
        --paper) words=$(compgen -W 'a4 letter' -- "$word"); value=yes ;;
        --depends) value=yes ;;
        --outside) value=yes ;;
        --outside-seconds) nothing=yes; value=yes ;;
        --form) words=$(compgen -W 'text lines json sarif junit code-quality' -- "$word"); value=yes ;;
        --set) nothing=yes; value=yes ;;
        --as-of) words=$(compgen -W 'designed ordered made fitted' -- "$word"); value=yes ;;
        --shop) nothing=yes; value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --into --only --since --pdf --paper --depends --outside --outside-seconds --form --set --as-of --shop --allow-folder --color' -- "$word") ;;
      esac
      ;;
    changes)
      case $before in
        --from-as-of) words=$(compgen -W 'designed ordered made fitted' -- "$word"); value=yes ;;
        --into) value=yes ;;
        --paper) words=$(compgen -W 'a4 letter' -- "$word"); value=yes ;;
        --form) words=$(compgen -W 'text json' -- "$word"); value=yes ;;
        --set) nothing=yes; value=yes ;;
        --as-of) words=$(compgen -W 'designed ordered made fitted' -- "$word"); value=yes ;;
        --shop) nothing=yes; value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --from-as-of --into --pdf --paper --form --set --as-of --shop --allow-folder --color' -- "$word") ;;
      esac
      ;;
    fleet)
      case $before in
        --into) value=yes ;;
        --only) words=$(compgen -W 'bench-card calendar change-sheet checks cord-map cut-list diagram dry-fit-card emergency-splice-card findings index labels measuring-sheet order-list proof-sheet receiving-card rig-drawing sign-off spool-plan survey-report take-up echo kit-list tune-sheet shop-order' -- "$word"); value=yes ;;
        --paper) words=$(compgen -W 'a4 letter' -- "$word"); value=yes ;;
        --workers) nothing=yes; value=yes ;;
        --form) words=$(compgen -W 'text lines json sarif junit code-quality' -- "$word"); value=yes ;;
        --fail-on) words=$(compgen -W 'error warning note' -- "$word"); value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --into --only --pdf --paper --workers --form --fail-on --allow-folder --color' -- "$word") ;;
      esac
      ;;
    find)
      case $before in
        --form) words=$(compgen -W 'text csv json' -- "$word"); value=yes ;;
        --workers) nothing=yes; value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --form --workers --allow-folder --color' -- "$word") ;;
      esac
      ;;
    plan)
      case $before in
        --into) nothing=yes; value=yes ;;
        --form) words=$(compgen -W 'text lines json sarif junit code-quality' -- "$word"); value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --into --form --allow-folder --color' -- "$word") ;;
      esac
      ;;
    seal)
      case $before in
        --into) value=yes ;;
        --sign-with) value=yes ;;
        --key) value=yes ;;
        --only) words=$(compgen -W 'bench-card calendar change-sheet checks cord-map cut-list diagram dry-fit-card emergency-splice-card findings index labels measuring-sheet order-list proof-sheet receiving-card rig-drawing sign-off spool-plan survey-report take-up echo kit-list tune-sheet shop-order' -- "$word"); value=yes ;;
        --paper) words=$(compgen -W 'a4 letter' -- "$word"); value=yes ;;
        --shop) nothing=yes; value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --into --sign-with --key --only --pdf --paper --shop --allow-folder --color' -- "$word") ;;
      esac
      ;;
    verify)
      case $before in
        --seal) nothing=yes; value=yes ;;
        --sign-with) value=yes ;;
        --signers) value=yes ;;
        --signer) nothing=yes; value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --seal --sign-with --signers --signer --again' -- "$word") ;;
      esac
      ;;
    mend)
      case $before in
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --print --color' -- "$word") ;;
      esac
      ;;
    show)
      case $before in
        --form) words=$(compgen -W 'text csv json' -- "$word"); value=yes ;;
        --wish) nothing=yes; value=yes ;;
        --set) nothing=yes; value=yes ;;
        --as-of) words=$(compgen -W 'designed ordered made fitted' -- "$word"); value=yes ;;
        --shop) nothing=yes; value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --form --wish --set --as-of --shop --allow-folder --color' -- "$word") ;;
        *) [ "$given" -gt 0 ] || words=$(compgen -W 'points lengths pieces take-up marks readings uncertainty measure-next sensitivity temperature account tension standing tune turns days tune-inputs tune-doubt replaced fits play joints strength loads checks results limits stack parts states differences made inspections record sources' -- "$word") ;;
      esac
      ;;
    tidy)
      case $before in
        --form) words=$(compgen -W 'text lines json sarif junit code-quality' -- "$word"); value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --look --print --form --color' -- "$word") ;;
      esac
      ;;
    editor)
      case $before in
        --allow-folder) value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --allow-folder --stdio' -- "$word") ;;
      esac
      ;;
    watch)
      case $before in
        --port) nothing=yes; value=yes ;;
        --page) value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --port --page' -- "$word") ;;
      esac
      ;;
    page)
      case $before in
        --into) value=yes ;;
        --seal) value=yes ;;
        --page) value=yes ;;
        --allow-folder) value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --into --seal --page --allow-folder --color' -- "$word") ;;
      esac
      ;;
    list)
      case $before in
        --form) words=$(compgen -W 'text csv json' -- "$word"); value=yes ;;
        --outside) value=yes ;;
        --outside-seconds) nothing=yes; value=yes ;;
        --color) words=$(compgen -W 'auto always never' -- "$word"); value=yes ;;
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help --form --outside --outside-seconds --color' -- "$word") ;;
        *) [ "$given" -gt 0 ] || words=$(compgen -W 'words kinds ends units threads findings back-ends tables phases completion' -- "$word") ;;
      esac
      ;;
    explain)
      case $before in
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help' -- "$word") ;;
      esac
      ;;
    help)
      case $before in
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help' -- "$word") ;;
        *) [ "$given" -gt 0 ] || words=$(compgen -W 'begin enter check build changes fleet find plan seal verify mend show tidy editor watch page list explain help version' -- "$word") ;;
      esac
      ;;
    version)
      case $before in
      esac
      [ -z "$value" ] || { __sheerpole_offer; return; }
      case $word in
        -*) words=$(compgen -W '-h --help' -- "$word") ;;
      esac
      ;;
  esac
  __sheerpole_offer
}
complete -F _sheerpole sheerpole
