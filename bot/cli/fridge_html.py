"""The page for the fridge as HTML: one file, printed from any browser, read on any phone."""

from __future__ import annotations

from collections.abc import Iterator
from html import escape
from itertools import groupby

from bot.plan import fridge_words as words
from bot.plan.fridge import Fridge
from bot.plan.fridge_words import day_name

_STYLE = """
@page { margin: 10mm }
body { font: 12px/1.25 Helvetica, Arial, sans-serif; color: #000; max-width: 190mm; margin: auto }
h1 { font-size: 34px; margin: 0 } h2 { font-size: 15px; margin: 10px 0 4px } p { margin: 2px 0 }
header, .row { display: flex; gap: 6px; flex-wrap: wrap } header > div { flex: 1 }
.number { font-size: 22px; font-weight: bold; min-height: 26px; border-bottom: 1px solid }
.box { border: 1px solid; border-radius: 3px; padding: 4px 6px; flex: 1 }
.now { border-width: 2px } .now ul { columns: 3; margin: 4px 0; padding-left: 14px }
.big { font-size: 17px } .blank { border-bottom: 1px solid; min-height: 16px }
.wide { overflow-x: auto } table { border-collapse: collapse; width: 100% }
th, td { border-top: 1px solid #999; padding: 2px; text-align: center }
td:first-child { white-space: nowrap }
td:first-child, td:nth-child(2) { text-align: left } td small { display: block }
.week { text-align: center; white-space: nowrap }
@media print { body { font-size: 10.5px; zoom: 0.9 } } footer { font-size: 10px; margin-top: 8px }
"""


def as_html(page: Fridge) -> str:
    """The page with its style in it; nothing is loaded from anywhere."""
    return "\n".join(_page(page)) + "\n"


def _page(page: Fridge) -> Iterator[str]:
    lang = page.lang
    yield f'<!doctype html>\n<html lang="{lang}"><head><meta charset="utf-8">'
    yield '<meta name="viewport" content="width=device-width">'
    yield f"<title>{escape(page.patient)}</title><style>{_STYLE}</style></head><body>"
    yield f"<header><div><h1>{escape(page.patient)}</h1>"
    yield "".join(f"<p>{escape(part)}</p>" for part in page.about.split(" · "))
    yield "</div><div>"
    for phone in page.phones:
        yield f"<p>{escape(phone.label)}</p>"
        yield f'<p class="number">{escape(phone.number)}</p>'
    yield "</div></header>"
    yield f'<div class="box now"><b class="big">{escape(words.PHONE_NOW.say(lang))}</b><ul>'
    yield "".join(f"<li>{escape(flag.say(lang))}</li>" for flag in words.RED_FLAGS)
    yield f"</ul></div><h2>{escape(words.TWO_WEEKS.say(lang))}</h2>"
    yield from _ticks(page)
    yield f"<p><b>{escape(words.DOSES.say(lang))}</b></p>"
    yield '<div class="row">'
    for one in page.milestones:
        yield f'<div class="box"><b class="big">{escape(one.head)}</b>'
        yield f'<p class="big">{escape(one.when)}</p><p>{escape(one.more)}</p>'
        if one.appointment:
            yield f'<p class="blank">{escape(one.appointment)}</p>'
        yield "</div>"
    yield f'</div><h2>{escape(page.weeks_head)}</h2><div class="row">'
    for week in page.weeks:
        yield f'<div class="box week"><p>{escape(week.head)}</p><p>{escape(week.dates)}</p>'
        yield f'<b class="big">{escape(week.minutes or "☐")}</b><p>{escape(week.outings)}</p>'
        yield '<p class="blank"></p></div>' if week.minutes else "</div>"
    yield f"</div><footer>{escape(page.footer)}</footer></body></html>"


def _ticks(page: Fridge) -> Iterator[str]:
    yield f'<div class="wide"><table><tr><th></th><th>{escape(words.DAY.say(page.lang))}</th>'
    for day, on in page.days:
        yield f"<th>{day_name(on, page.lang)}<br><b>{on.day}</b><br>{day}</th>"
    yield "</tr>"
    for when, rows in groupby(page.rows, key=lambda row: row.when):
        hour = when
        for row in rows:
            yield f'<tr><td class="big"><b>{escape(hour)}</b></td>'
            yield f"<td><b>{escape(row.head)}</b><small>{escape(row.rest)}</small></td>"
            yield "".join(f"<td>{'☐' if day in row.days else ''}</td>" for day, _ in page.days)
            yield "</tr>"
            hour = ""
    yield "</table></div>"
