// The words and signs of the rig language. No C++ in here. Comments and blanks do not reach the parser.
//
// Spellings that are refused have tokens of their own (from ARROW on), so that each gets its own finding with its
// place and the spelling that was meant. The last rule takes any character, so the lexer itself never fails.
lexer grammar RigLexer;

// Words with a meaning. Each is spelled as its token in small letters (`x` for TIMES) and told from the other names
// behind the lexer, which so has one way through all words. The parser rule `word` admits all of them as names again.
tokens {
    LANGUAGE, USE, LET, EXPECT, FROM, OF, ON, TIMES, MIRRORED, FREE, CLAMPED, ENDS, MEASURED, DRAWN, MAKER, STANDARD,
    PRACTICE, ASSUMED, COMPUTED
}

COMMENT : '#' ~[\r\n]* ;

// Line ends with the blank lines and the indentation behind them. Which of them end a statement is decided between
// lexer and parser (see README.md).
NEWLINE : ( [\r\n] BLANK* )+ ;

BLANKS : BLANK+ ;

// A name (cap-tang) or the unit behind a number (mm, lbf-ft, degC).
NAME : WORD ;
// kg/m, ppm/K
COMPOUND_UNIT : WORD '/' WORD ;

// ---- numbers: 12  0.5  11_642  24e-6  3/8  7 3/8  7-3/8  7½

NUMBER
    : DECIMAL ( [eE] [+\-]? [0-9]+ )?
    | FRACTION
    | DIGITS ( BLANK+ | '-' ) FRACTION
    | ( DIGITS ( BLANK* | '-' ) )? VULGAR
    ;

DATE : [0-9] [0-9] [0-9] [0-9] '-' [0-9] [0-9] '-' [0-9] [0-9] ;

// 38' 7 3/8"  38ft 7-3/8in  38'-7"  38'  7 3/8"
LENGTH
    : PART FEET
    | PART INCHES
    | PART ( FEET | BLANK* 'ft' ) BLANK* ( '-' BLANK* )? PART ( INCHES | BLANK* 'in' )
    ;

STRING : '"' ( ~["\\\r\n] | '\\' ~[\r\n] )* '"' ;

// ---- signs

LBRACE : '{' ;
RBRACE : '}' ;
LPAREN : '(' ;
RPAREN : ')' ;
LBRACKET : '[' ;
RBRACKET : ']' ;
COLON : ':' ;
EQUALS : '=' ;
COMMA : ',' ;
DOT : '.' ;
GREATER : '>' ;
PLUS : '+' ;
MINUS : '-' ;
STAR : '*' ;
SLASH : '/' ;
PERCENT : '%' ;
TOLERANCE : '±' | '+-' | '+/-' ;

// ---- refused spellings

ARROW : '->' | '=>' | '\u2192' | '\u21D2' ;
SEMICOLON : ';' ;
SLASH_COMMENT : '//' ~[\r\n]* ;
UNCLOSED_STRING : '"' ( ~["\\\r\n] | '\\' ~[\r\n] )* '\\'? ;
OTHER_QUOTES
    : [\u201C\u201D\u201E\u00AB] ~["\u201C\u201D\u00BB\r\n]* ["\u201C\u201D\u00BB]
    | ['\u2018\u2019] ~['\u2018\u2019\r\n]* ['\u2018\u2019]
    ;
// 11,815  11 642  38-7-3/8  5.  .5  1__2  12-3
MALFORMED_NUMBER
    : [0-9]+ ( ( BLANK+ | [._,/\-]+ ) [0-9]+ )* [._]*
    | '.' [0-9] [0-9_]*
    ;
// cap_tang  cap--tang  cap-
MALFORMED_NAME : ( [A-Za-z_] | FOREIGN ) ( [A-Za-z0-9_\-] | FOREIGN )* ;
UNKNOWN : . ;

// ---- pieces

fragment WORD : [A-Za-z] ( '-'? [A-Za-z0-9] )* ;
fragment DIGITS : [0-9] ( '_'? [0-9] )* ;
fragment DECIMAL : DIGITS ( '.' DIGITS )? ;
fragment FRACTION : DIGITS '/' DIGITS ;
fragment PART : DECIMAL | FRACTION | DIGITS ( BLANK+ | '-' ) FRACTION | ( DIGITS ( BLANK* | '-' ) )? VULGAR ;
// Halves, quarters and eighths.
fragment VULGAR : [\u00BC-\u00BE\u215B-\u215E] ;
fragment FEET : ['\u2032\u2018\u2019] ;
fragment INCHES : ["\u2033\u201C\u201D] | '\'\'' | '\u2032\u2032' | '\u2019\u2019' ;
// Blank, tab, and the non-breaking, thin and narrow blanks of typesetters and spreadsheets.
fragment BLANK : [ \t\u00A0\u2009\u202F] ;
fragment FOREIGN : [\u00C0-\u00D6\u00D8-\u00F6\u00F8-\u024F\u0370-\u052F] ;
