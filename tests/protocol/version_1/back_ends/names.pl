#!/usr/bin/env perl
# A back end as the first authors wrote them, in another language: the names of everything. It stays as it is.
use strict;
use warnings;
use JSON::PP;

my $request = decode_json(do { local $/; <STDIN> });
if ($request->{verb} eq 'describe') {
    print encode_json({ version => 1, name => 'names', summary => 'the names of everything' });
} else {
    my $text = '';
    for my $sort (qw(spars points spreaders materials splices parts stays)) {
        $text .= join(' ', "$sort:", map { $_->{name} } @{ $request->{rig}{$sort} }) . "\n";
    }
    $text .= join(' ', 'of a check:', sort grep { /^(check|outcome|subject|words)$/ } keys %{ $request->{check_results}[0] }) . "\n";
    print encode_json({ version => 1, files => [{ name => 'names.txt', text => $text }] });
}
