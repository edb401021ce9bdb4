#!/usr/bin/env perl
# What to have in the bucket before somebody is hoisted: for each place on the mast, from the top, the parts that hang
# there above the line of each stay.
#
#     sheerpole build boat.rig --into out --outside examples/outside/carry_aloft.pl
#
# How a program outside speaks with Sheerpole is written in docs/backends/outside.md. This one needs nothing but Perl.
use strict;
use warnings;
use JSON::PP;

my $json    = JSON::PP->new->utf8->canonical;
my $request = $json->decode(do { local $/; <STDIN> });
die "carry-aloft speaks version 1 and no other\n"
    unless $request->{format} eq 'sheerpole-request' && $request->{version} == 1;

if ($request->{verb} eq 'describe') {
    answer(
        name    => 'carry-aloft',
        summary => 'what to take up the mast: the parts at each place aloft, from the top',
        outputs => ['carry-aloft.txt'],
    );
} else {
    answer(files => [{ name => 'carry-aloft.txt', text => page($request->{rig}) }]);
}

sub answer {
    print $json->encode({ format => 'sheerpole-reply', version => 1, @_ });
}

sub page {
    my ($rig) = @_;
    my %part  = map { $_->{name} => $_ } @{ $rig->{parts} };
    my %point = map { $_->{name} => $_ } @{ $rig->{points} };
    my (%at, @nowhere);
    for my $stay (@{ $rig->{stays} }) {
        if (!@{ $stay->{path} }) {
            push @nowhere, $stay->{name};
            next;
        }
        my @above;
        for my $item (@{ $stay->{stack} }) {
            last if $item->{item} eq 'line';
            push @above, $item if $part{ $item->{part} }{role} ne 'boat fitting';
        }
        push @{ $at{ $stay->{path}[0]{point} } }, [$stay->{name}, @above];
    }
    my $text = "$rig->{boat}{title}: what to take up the mast\n";
    for my $place (sort { $point{$b}{z_mm} <=> $point{$a}{z_mm} || $a cmp $b } keys %at) {
        my $title = $point{$place}{title} eq '' ? '' : " \"$point{$place}{title}\"";
        $text .= sprintf "\n%s%s, %.2f m above the waterline\n", $place, $title, $point{$place}{z_mm} / 1000;
        for my $stay (@{ $at{$place} }) {
            my ($name, @above) = @$stay;
            my @words = map { $_->{count} > 1 ? "$_->{count} x $_->{part}" : $_->{part} } @above;
            $text .= "  [ ] $name: " . (@words ? join(', ', @words) : 'the line itself') . "\n";
        }
    }
    $text .= "\nno path through points, so no place: @nowhere\n" if @nowhere;
    return $text;
}
