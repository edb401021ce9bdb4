if exists('b:did_ftplugin')
  finish
endif
let b:did_ftplugin = 1
setlocal commentstring=#\ %s comments=:# expandtab shiftwidth=2 softtabstop=2
setlocal iskeyword=@,48-57,-
setlocal suffixesadd=.rig
setlocal include=^\\s*use\\s*\"\\zs[^\"]*\\ze\"
let b:undo_ftplugin = 'setlocal commentstring< comments< expandtab< shiftwidth< softtabstop< iskeyword< suffixesadd< include<'
