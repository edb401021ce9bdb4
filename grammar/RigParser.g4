// The shape of a rig file. Kinds, properties and their types are data elsewhere: the grammar knows only statements,
// properties, items and values. No C++ in here.
//
// Every choice is made on the next token alone, so the generated parser never has to look further. NEWLINE stands
// only where it separates two statements or two entries; the others are dropped before the parser (see README.md).
parser grammar RigParser;

options { tokenVocab = RigLexer; }

file : ( statements+=statement ( NEWLINE statements+=statement )* )? EOF ;

statement
    : LANGUAGE version=NUMBER
    | USE path=STRING
    | LET name=word EQUALS content=value
    | EXPECT name=word ( DOT parts+=word )* EQUALS content=value
    | kind=NAME ( called=label ( DOT half=word )? )? title=STRING? rest=declarationRest
    ;

// What a declaration may have behind its name and title.
declarationRest : ( FROM base=word )? ( OF target=word ( DOT side=word )? )? ( ON frame=word )? body=block ;

block : LBRACE ( entries+=entry ( NEWLINE entries+=entry )* )? RBRACE ;

// A property, an item of a stack, or a declaration inside another.
entry
    : count=NUMBER TIMES name=word arguments=settings?
    | name=word
      ( arguments=settings
      | COLON content=value
      | DOT side=word title=STRING? COLON content=value
      | title=STRING ( COLON content=value | rest=declarationRest )
      | called=label ( DOT half=word )? title=STRING? rest=declarationRest
      | rest=declarationRest
      )?
    ;

settings : LPAREN ( items+=setting ( COMMA items+=setting )* )? RPAREN ;

setting : name=word COLON content=expression bound=tolerance? origin=source? ;

value
    : ( stops+=stop ( ( path=GREATER stops+=stop )+ | ( list=COMMA stops+=stop )+ )?
      | LBRACKET stops+=stop ( ( path=GREATER stops+=stop )+ | ( list=COMMA stops+=stop )+ )? RBRACKET
      )
      mirrored=MIRRORED? (bound=tolerance late=MIRRORED?)? origin=source?
    ;

stop : content=expression passage=( FREE | CLAMPED | ENDS )? ;

tolerance : TOLERANCE amount=operand ;

source : kind=( MEASURED | DRAWN | MAKER | STANDARD | PRACTICE | ASSUMED | COMPUTED ) note=STRING? ;

expression : terms+=product ( signs+=( PLUS | MINUS ) terms+=product )* ;

product : factors+=operand ( signs+=( STAR | SLASH ) factors+=operand )* ;

// A malformed number was reported before; it is let through so that the rest of its line is still read.
operand
    : minus=MINUS?
      ( number=( NUMBER | MALFORMED_NUMBER ) unit=( NAME | COMPOUND_UNIT | PERCENT )?
      | length=LENGTH
      | date=DATE
      | text=STRING
      | name=word ( DOT side=word | arguments=settings )?
      | LPAREN parts+=expression ( COMMA parts+=expression )* RPAREN unit=( NAME | COMPOUND_UNIT | PERCENT )?
      )
    ;

// Any name.
word
    : NAME | LANGUAGE | USE | LET | EXPECT | FROM | OF | ON | TIMES | MIRRORED | FREE | CLAMPED | ENDS | MEASURED
    | DRAWN | MAKER | STANDARD | PRACTICE | ASSUMED | COMPUTED
    ;

// A name where `from`, `of` and `on` have their meaning.
label
    : NAME | LANGUAGE | USE | LET | EXPECT | TIMES | MIRRORED | FREE | CLAMPED | ENDS | MEASURED | DRAWN | MAKER
    | STANDARD | PRACTICE | ASSUMED | COMPUTED
    ;
