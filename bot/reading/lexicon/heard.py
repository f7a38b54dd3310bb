"""Words that a phone hears wrong, and the neighbours that tell what was meant.

``heard = meant | words before``, ``/ words after``: one neighbour is enough; with ``&`` in
place of ``/`` it takes both.
"""

from __future__ import annotations

HEARD = """
through = threw | he she it dog cat they & up it
throne = thrown | / up
read = red | is looks looking very really bit / hot sore swollen
wight whight = white | are is look looks gone going very
meet = meat | his her eat eats ate some
week = weak | so very really too feels seems looks
week = weak | is hes shes was & and in but legs since
pane payne = pain | in my some no bad / killer killers
hole = whole | a the & pack packet bottle box lot strip bag thing bowl pill tablet tub
whole = hole | a little big & in
to too = two | for about gave just only took & minutes pills tablets times walks hours
for = four | about only just & minutes pills tablets times walks hours
ate = eight | at about around & minutes oclock am pm
wait = weight | no any some full put puts putting bear bears & on
leed = lead | the his her on
pea = pee | his her to / is was has
we = wee | a his her no did
brawling = bringing | been keeps kept was is
pail = pale | gums are is look looks
blew = blue | gums tongue are gone turned went
an = and | / nothing nothin not no his her he she it crying cryin foaming foamin drinking drinkin then wont cant
limb = limp | no slight little
"""
