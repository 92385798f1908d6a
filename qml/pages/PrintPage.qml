// What can be taken along on paper: the card for the lid, the report, the wiring; each plot as a
// drawing or as numbers.
// Shown by a Loader of another file, which Qt 6.4 cannot do for bound components.
// qmllint disable unqualified
import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Candlemark

SplitPage {
    id: page

    required property ScenarioDocument document
    required property PlanRunner plan
    readonly property bool busy: printer.busy
    readonly property alias desk: printer
    readonly property alias sheetDialog: sheetDialog
    readonly property alias plotDialog: plotDialog
    readonly property alias printerSheet: printerSheet

    PrintDesk {
        id: printer
        document: page.document
    }
    PrinterSheet {
        id: printerSheet
        onPicked: name => printer.print(name)
    }
    ReplaceSheet { id: sheetThere }
    ReplaceSheet { id: plotThere }
    SavingDialog {
        id: sheetDialog
        title: qsTr("Save as PDF")
        document: page.document
        asking: sheetThere
        defaultSuffix: "pdf"
        nameFilters: [qsTr("PDF (*.pdf)")]
        onChosen: file => printer.save(file)
    }
    SavingDialog {
        id: plotDialog
        property string plot
        title: qsTr("Save the plot")
        document: page.document
        asking: plotThere
        onChosen: file => printer.savePlot(plot, defaultSuffix, file)
    }

    function askForSheet() {
        const file = printer.suggested(printer.sheet, "pdf")
        sheetDialog.currentFolder = page.folderOf(file)
        sheetDialog.selectedFile = file
        sheetDialog.open()
    }
    function askForPlot(name, kind) {
        const file = printer.suggested(name, kind)
        plotDialog.plot = name
        plotDialog.defaultSuffix = kind
        plotDialog.nameFilters = [kind === "csv" ? qsTr("Numbers (*.csv)") : qsTr("Drawing (*.svg)")]
        plotDialog.currentFolder = page.folderOf(file)
        plotDialog.selectedFile = file
        plotDialog.open()
    }
    function folderOf(file) {
        const path = file.toString()
        return path.substring(0, path.lastIndexOf("/"))
    }

    main: Component {
        ColumnLayout {
            spacing: Tokens.gap

            SectionTitle {
                Layout.fillWidth: true
                text: qsTr("To take along on paper")
            }
            Flow {
                id: sheetChoices
                Layout.fillWidth: true
                spacing: Tokens.gapSmall
                Accessible.role: Accessible.Grouping
                Accessible.name: qsTr("To take along on paper")
                Repeater {
                    model: [
                        { key: "card", name: qsTr("Card for the lid"), detail: qsTr("one page, to read at night") },
                        { key: "report", name: qsTr("Report"), detail: qsTr("every answer with its working") },
                        { key: "wiring", name: qsTr("Wiring sheet"), detail: qsTr("the build and its fuses") }
                    ]
                    ChoiceButton {
                        required property var modelData
                        objectName: "sheet_" + modelData.key
                        width: Math.min(implicitWidth, sheetChoices.width)
                        text: modelData.name
                        detail: modelData.detail
                        chosen: printer.sheet === modelData.key
                        onClicked: printer.sheet = modelData.key
                    }
                }
            }
            Flow {
                id: paperChoices
                Layout.fillWidth: true
                spacing: Tokens.gapSmall
                Accessible.role: Accessible.Grouping
                Repeater {
                    model: [
                        { key: "letter", name: qsTr("Letter"), detail: qsTr("8½ × 11 in") },
                        { key: "a4", name: qsTr("A4"), detail: qsTr("210 × 297 mm") }
                    ]
                    ChoiceButton {
                        required property var modelData
                        objectName: "paper_" + modelData.key
                        width: Math.min(implicitWidth, paperChoices.width)
                        text: modelData.name
                        detail: modelData.detail
                        spoken: qsTr("Paper %1").arg(modelData.name)
                        chosen: printer.paper === modelData.key
                        onClicked: printer.paper = modelData.key
                    }
                }
            }
            ActionButton {
                objectName: "savePdf"
                Layout.fillWidth: true
                main: true
                text: printer.making ? qsTr("Being made …")
                    : printer.sheet === "card" ? qsTr("Save the card as PDF")
                    : printer.sheet === "report" ? qsTr("Save the report as PDF")
                    : qsTr("Save the wiring sheet as PDF")
                enabled: printer.pages > 0 && !printer.making
                onClicked: page.askForSheet()
            }
            ActionButton {
                objectName: "printIt"
                Layout.fillWidth: true
                text: qsTr("Print on a printer")
                enabled: printer.pages > 0 && !printer.making
                onClicked: printerSheet.ask(printer.printers())
            }
            PlainText {
                objectName: "printTold"
                Layout.fillWidth: true
                visible: text.length > 0
                text: printer.trouble.length > 0 ? printer.trouble : printer.told
                color: printer.trouble.length > 0 || printer.failed ? Tokens.stop : Tokens.text
                font.pixelSize: Tokens.typeBody
                wrapMode: Text.Wrap
                Accessible.role: Accessible.AlertMessage
                Accessible.name: text
            }
            Fold {
                objectName: "plots"
                Layout.fillWidth: true
                visible: printer.plots.length > 0
                title: qsTr("Plots, as drawings or as numbers")
                open: page.beside
                inside: Component {
                    Column {
                        spacing: Tokens.gapSmall
                        Repeater {
                            model: printer.plots
                            RowLayout {
                                id: row
                                required property var modelData
                                width: parent?.width ?? 0
                                spacing: Tokens.gapSmall

                                PlainText {
                                    Layout.fillWidth: true
                                    text: row.modelData.title
                                    color: Tokens.text
                                    font.pixelSize: Tokens.typeSmall
                                    wrapMode: Text.Wrap
                                    Accessible.role: Accessible.StaticText
                                    Accessible.name: text
                                }
                                ActionButton {
                                    objectName: "svg_" + row.modelData.name
                                    text: "SVG"
                                    spoken: qsTr("Save as a drawing: %1").arg(row.modelData.title)
                                    onClicked: page.askForPlot(row.modelData.name, "svg")
                                }
                                ActionButton {
                                    objectName: "csv_" + row.modelData.name
                                    text: "CSV"
                                    spoken: qsTr("Save as numbers: %1").arg(row.modelData.title)
                                    onClicked: page.askForPlot(row.modelData.name, "csv")
                                }
                            }
                        }
                    }
                }
            }
        }
    }
    behind: Component {
        ColumnLayout {
            id: preview
            property int shownPage: 0
            property bool larger: false
            spacing: Tokens.gapSmall

            RowLayout {
                Layout.fillWidth: true
                visible: printer.pages > 0
                spacing: Tokens.gapSmall

                ActionButton {
                    objectName: "pageBack"
                    text: "‹"
                    spoken: qsTr("Page before")
                    enabled: paper.page > 0
                    onClicked: preview.shownPage = paper.page - 1
                }
                PlainText {
                    Layout.fillWidth: true
                    horizontalAlignment: Text.AlignHCenter
                    text: qsTr("Page %1 of %2").arg(paper.page + 1).arg(printer.pages)
                    color: Tokens.text
                    font.pixelSize: Tokens.typeSmall
                    wrapMode: Text.Wrap
                    Accessible.role: Accessible.StaticText
                    Accessible.name: text
                }
                ActionButton {
                    objectName: "pageOn"
                    text: "›"
                    spoken: qsTr("Next page")
                    enabled: paper.page + 1 < printer.pages
                    onClicked: preview.shownPage = paper.page + 1
                }
                ActionButton {
                    objectName: "larger"
                    text: preview.larger ? "−" : "+"
                    spoken: preview.larger ? qsTr("Show the whole width") : qsTr("Show it larger")
                    onClicked: preview.larger = !preview.larger
                }
            }
            Flickable {
                Layout.fillWidth: true
                Layout.preferredHeight: paper.height
                visible: printer.pages > 0
                contentWidth: paper.width
                contentHeight: paper.height
                flickableDirection: Flickable.HorizontalFlick
                interactive: contentWidth > width + 1
                boundsBehavior: Flickable.StopAtBounds
                clip: true
                ScrollBar.horizontal: QuietBar {
                    policy: preview.larger ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                }

                SheetPreview {
                    id: paper
                    objectName: "preview"
                    width: Math.max(1, preview.width * (preview.larger ? 2 : 1))
                    height: width * shape
                    opacity: printer.making ? 0.5 : 1
                    desk: printer
                    page: Math.min(preview.shownPage, Math.max(0, printer.pages - 1))
                    Accessible.role: Accessible.StaticText
                    Accessible.name: spoken

                    Rectangle {
                        anchors.fill: parent
                        color: "transparent"
                        border.width: 1
                        border.color: Tokens.outline
                    }
                }
            }
        }
    }
}
