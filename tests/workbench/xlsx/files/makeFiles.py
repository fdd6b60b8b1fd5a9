# Makes the workbook files beside it, and the answers of two other spreadsheets to them. Run by hand, where these are installed:
#   Debian 12: apt-get install libreoffice-calc gnumeric; pip install openpyxl==3.1.5 pillow
#   python3 makeFiles.py
# Made with openpyxl 3.1.5, LibreOffice 7.4.7 and Gnumeric 1.12.55. Everything in them is invented: the char kiln of a community orchard.
#   openpyxl.xlsx     written by openpyxl, without answers; its filled-down formulas made shared ones, as spreadsheets write them
#   libreoffice.xlsx  openpyxl.xlsx opened, calculated and saved by LibreOffice
#   gnumeric.xlsx     the same by Gnumeric
#   answers.json      what LibreOffice and Gnumeric calculated, sheet by sheet and cell by cell
#   beside.xlsx       written by openpyxl: charts, a picture, comments, a table and much else that the grid does not show
#   days1904.xlsx     written by openpyxl: days counted from 1904
import datetime
import json
import re
import subprocess
import tempfile
import zipfile
from pathlib import Path

from openpyxl import Workbook, load_workbook
from openpyxl.chart import BarChart, LineChart, Reference
from openpyxl.comments import Comment
from openpyxl.drawing.image import Image
from openpyxl.formatting.rule import CellIsRule
from openpyxl.styles import Font, Protection
from openpyxl.utils.datetime import CALENDAR_MAC_1904
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.formula import ArrayFormula
from openpyxl.worksheet.table import Table
from PIL import Image as Picture

HERE = Path(__file__).parent
RUNS = [("Walnut shells", 212.4, 262.85, 255.98), ("Plum stones", 208.1, 251.3, 246.02), ("Apple prunings", 210.75, 240.2, 229.4), ("Hazel rods", 209.9, 244.61, 236.05)]


def runs(book):
    sheet = book.active
    sheet.title = "Kiln runs"
    sheet["A1"] = "Invented: runs of the orchard's kiln"
    sheet.merge_cells("A1:D1")
    sheet.append(["Batch", "Tin (g)", "Moist (g)", "Dry (g)", "Water (g)", "Share", "Gas", "Tins", "Steps", "Log"])
    for row, run in enumerate(RUNS, start=3):
        for column, value in enumerate(run, start=1):
            sheet.cell(row, column, value)
    for row in range(3, 7):
        sheet[f"E{row}"] = f"=C{row}-D{row}"
        sheet[f"F{row}"] = f"=E{row}/(C{row}-$B{row})"
        sheet[f"F{row}"].number_format = "0.0%"
        sheet[f"G{row}"] = f'="SO2"&" of "&A{row}&" in ""C3"""'
        sheet[f"H{row}"] = f"=SUM(B$3:B{row})*rate+tin_one"
        sheet[f"I{row}"] = f"='Tins list'!B{row - 1}+SUM('Tins list'!$B:$B)"
        sheet[f"J{row}"] = f"=LOG10(B{row})+ATAN2(1,B{row})"
    # The value stands once, in the first of the four cells.
    sheet["A8"], sheet["B8"], sheet["F8"] = "Merged", 25, "=SUM(B8:E8)"
    sheet.merge_cells("B8:E8")
    sheet["A9"], sheet["B9"] = "Area of two by two", 12
    sheet.merge_cells("B9:C10")
    sheet["F9"] = "=SUM(B9:C10)+COUNT(B9:C10)"
    return sheet


def kinds(book):
    sheet = book.create_sheet("Kinds")
    rows = [
        ("true", True, "=IF(B1,1,2)"), ("false", False, "=B2=FALSE"), ("error", "#N/A", "=ISNA(B3)"), ("division", "#DIV/0!", '=IFERROR(B4,"none")'),
        ("percent as text", "12 %", "=LEN(B5)"), ("percent", 0.125, "=B6*2"), ("text of digits", "007", "=LEN(B7)"), ("looks like a formula", "'=1+1", "=LEN(B8)"),
        ("day", datetime.date(2026, 1, 15), "=B9+1"), ("time", datetime.time(9, 45), "=B10*24"), ("both", datetime.datetime(2026, 1, 15, 9, 45, 30), "=MOD(B11,1)*24"),
        ("before March 1900", 59, "=B12+1"), ("long number", 0.1234567890123456, "=B13*10"), ("tiny", 1.5e-12, "=B14*2"), ("spaces", "  two  spaces ", "=LEN(B15)"),
        ("lines", "one\ntwo", "=LEN(B16)"), ("other letters \U0001f333", "Hütte 炭", "=LEN(B17)"), ("marks", 'a<b>&"c"', "=LEN(B18)"),
    ]
    for row, (what, value, formula) in enumerate(rows, start=1):
        sheet.cell(row, 1, what)
        sheet.cell(row, 2, value)
        sheet.cell(row, 3, formula)
    sheet["B6"].number_format = "0.0%"
    sheet["B8"].value = "=1+1"
    sheet["B8"].data_type = "s"
    sheet["B12"].number_format = "d-mmm-yy"
    for address, format in (("C9", "yyyy-mm-dd"), ("C10", "0.00")):
        sheet[address].number_format = format
    sheet["E1"] = ArrayFormula("E1:E4", "='Kiln runs'!C3:C6-'Kiln runs'!D3:D6")
    sheet["F1"] = ArrayFormula("F1", "=SUM('Kiln runs'!C3:C6*2)")
    sheet["G1"] = "=SUM(E1:E4)"
    sheet["G2"] = '=COUNTIF(A1:A18,"t*")'
    sheet["G3"] = '=VLOOKUP("Plum stones",\'Kiln runs\'!A3:D6,4,FALSE)'
    sheet["G4"] = "=SUMPRODUCT('Kiln runs'!C3:C6,'Kiln runs'!D3:D6)"
    sheet["G5"] = "=DATE(2026,1,15)-B9"
    sheet["G6"] = '=TEXT(B6,"0.0%")'
    sheet["G7"] = "=STDEV('Kiln runs'!C3:C6)"
    sheet["G8"] = "=50%+1.0E-1"


def tins(book):
    sheet = book.create_sheet("Tins list")
    sheet.append(["Tin", "Grams"])
    for number, grams in enumerate((212.4, 208.1, 210.75, 209.9), start=1):
        sheet.append([f"T{number}", grams])
    for name, meaning in (("tin_one", "'Tins list'!$B$2"), ("rate", "1.5")):
        book.defined_names[name] = DefinedName(name, attr_text=meaning)


SHEET = "xl/worksheets/sheet1.xml"


def shared(path):
    """Makes one shared formula of each filled-down column, as spreadsheets write them: text and area in the first cell alone."""
    with zipfile.ZipFile(path) as given:
        parts = {name: given.read(name) for name in given.namelist()}
    text = parts[SHEET].decode()
    for group, column in enumerate("EFGHIJ"):
        for row in range(3, 7):
            start = f'<f t="shared" ref="{column}3:{column}6" si="{group}">' if row == 3 else f'<f t="shared" si="{group}"/>'
            text, done = re.subn(
                rf'(<c r="{column}{row}"[^>]*>)<f>(.*?)</f>', lambda found: found[1] + (start + found[2] + "</f>" if row == 3 else start), text
            )
            assert done == 1, (column, row)
    parts[SHEET] = text.encode()
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as out:
        for name, content in parts.items():
            out.writestr(zipfile.ZipInfo(name, (2026, 1, 15, 12, 0, 0)), content, zipfile.ZIP_DEFLATED)


def beside():
    book = Workbook()
    sheet = book.active
    sheet.title = "Kiln runs"
    sheet.append(["Batch", "Moist (g)", "Dry (g)", "Water (g)"])
    for row, (batch, _, moist, dry) in enumerate(RUNS, start=2):
        sheet.append([batch, moist, dry, "=Runs[[#This Row],[Moist (g)]]-Runs[[#This Row],[Dry (g)]]"])
    sheet["B7"] = "=SUM(Runs[Moist (g)])"
    sheet["C7"] = "=COUNTA(Runs[#Headers])"
    sheet.add_table(Table(displayName="Runs", ref="A1:D5"))
    for kind, place in ((BarChart, "F1"), (LineChart, "F20")):
        chart = kind()
        chart.add_data(Reference(sheet, min_col=2, min_row=1, max_row=5), titles_from_data=True)
        sheet.add_chart(chart, place)
    sheet["A2"].comment = Comment("Shells from the north row.", "The orchard")
    sheet["A3"].hyperlink = "https://example.org/plums"
    sheet.conditional_formatting.add("B2:B5", CellIsRule(operator="greaterThan", formula=["250"], font=Font(bold=True)))
    rule = DataValidation(type="whole", operator="greaterThan", formula1="0", promptTitle="Grams", prompt="Whole grams.")
    sheet.add_data_validation(rule)
    rule.add("E2:E5")
    with tempfile.TemporaryDirectory() as folder:
        picture = Path(folder) / "kiln.png"
        Picture.new("RGB", (8, 8), "black").save(picture)
        sheet.add_image(Image(picture), "F40")
        hidden = book.create_sheet("Hidden notes")
        hidden["A1"] = "Only a note."
        hidden.sheet_state = "hidden"
        locked = book.create_sheet("Locked")
        locked["A1"] = 5
        locked["A1"].protection = Protection(locked=True)
        locked.protection.enable()
        locked.auto_filter.ref = "A1:B5"
        locked.column_dimensions["B"].hidden = True
        book.create_chartsheet("Chart alone").add_chart(BarChart())
        book.save(HERE / "beside.xlsx")


def days1904():
    book = Workbook()
    book.epoch = CALENDAR_MAC_1904
    sheet = book.active
    sheet.title = "Days"
    sheet["A1"] = datetime.date(2026, 1, 15)
    sheet["A2"] = datetime.time(9, 45)
    sheet["A3"] = 12.5
    sheet["B1"] = "=YEAR(A1)"
    sheet["B2"] = "=A2*24"
    book.save(HERE / "days1904.xlsx")


def through(program, target):
    source = HERE / "openpyxl.xlsx"
    with tempfile.TemporaryDirectory() as folder:
        out = Path(folder) / "openpyxl.xlsx"
        if program == "LibreOffice":
            profile = f"-env:UserInstallation=file://{folder}/profile"
            subprocess.run(["soffice", profile, "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", folder, source], check=True)
        else:
            subprocess.run(["ssconvert", "--recalc", "--export-type=Gnumeric_Excel:xlsx2", source, out], check=True)
        (HERE / target).write_bytes(out.read_bytes())


def plain(value):
    if isinstance(value, (datetime.datetime, datetime.date, datetime.time)):
        return {"day": value.isoformat()}
    return value


def answers(target):
    book = load_workbook(HERE / target, data_only=True)
    return {
        sheet.title: {cell.coordinate: plain(cell.value) for row in sheet.iter_rows() for cell in row if cell.value is not None} for sheet in book
    }


def main():
    book = Workbook()
    runs(book)
    kinds(book)
    tins(book)
    book.save(HERE / "openpyxl.xlsx")
    shared(HERE / "openpyxl.xlsx")
    through("LibreOffice", "libreoffice.xlsx")
    through("Gnumeric", "gnumeric.xlsx")
    found = {"LibreOffice": answers("libreoffice.xlsx"), "Gnumeric": answers("gnumeric.xlsx")}
    (HERE / "answers.json").write_text(json.dumps(found, ensure_ascii=False, indent=1) + "\n")
    beside()
    days1904()


main()
