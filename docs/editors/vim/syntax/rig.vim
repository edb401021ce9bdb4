" Rig files of Sheerpole. What a word is told by its place is left to the language server; this colours a text without one.
if exists('b:current_syntax')
  finish
endif
syntax case match
syntax match rigComment /#.*$/ contains=@Spell
syntax region rigString start=/"/ skip=/\\./ end=/"/ oneline contains=rigEscape
syntax match rigEscape /\\["\\]/ contained
syntax match rigBadQuotes /[“„«][^“”»]*[”»]/
syntax match rigSlashes +//.*$+
syntax match rigName /\<[A-Za-z]\%(-\?[A-Za-z0-9]\)*\>/
syntax match rigProperty /\<[A-Za-z]\%(-\?[A-Za-z0-9]\)*\ze\s*:/
syntax match rigDate /\<\d\{4}-\d\d-\d\d\>/
syntax match rigNumber /\<\d[0-9_]*\%(\.\d[0-9_]*\)\?\%([eE][-+]\?\d\+\)\?/ nextgroup=rigUnit skipwhite
syntax match rigNumber /\<\d\+\%([ -]\d\+\)\?\/\d\+/ nextgroup=rigUnit skipwhite
syntax match rigNumber /\<\d\+\%(\.\d\+\)\?'\%(\s*-\?\s*\d\+\%(\%([ -]\d\+\)\?\/\d\+\|\.\d\+\)\?"\)\?/
syntax match rigNumber /\<\d\+\%(\%([ -]\d\+\)\?\/\d\+\|\.\d\+\)\?"/
syntax match rigUnit /[A-Za-z%][A-Za-z0-9]*\%([-\/][A-Za-z][A-Za-z0-9]*\)*/ contained
syntax match rigSign /[>=+*/±]/
" At the beginning of a line, or in a block on one line, a word before a name or a brace is a kind.
syntax match rigKind /^\s*\zs[a-z][a-z0-9-]*\ze\%(\s\+[A-Za-z][A-Za-z0-9.-]*\)\?\%(\s*"[^"]*"\)\?\%(\s\+\%(from\|of\|on\)\s\+[A-Za-z0-9.-]\+\)*\s*{/
syntax match rigKeyword /^\s*\zs\%(language\|use\|let\|expect\)\ze\s/
syntax keyword rigKeyword from of on x mirrored free clamped ends
syntax keyword rigSource measured drawn maker standard practice assumed computed
syntax keyword rigSide port starboard
syntax sync minlines=1

highlight default link rigComment Comment
highlight default link rigString String
highlight default link rigEscape SpecialChar
highlight default link rigBadQuotes Error
highlight default link rigSlashes Error
highlight default link rigProperty Identifier
highlight default link rigDate Number
highlight default link rigNumber Number
highlight default link rigUnit Type
highlight default link rigSign Operator
highlight default link rigKind Structure
highlight default link rigKeyword Keyword
highlight default link rigSource StorageClass
highlight default link rigSide Constant
let b:current_syntax = 'rig'
