pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Forms
import Mountwright.Pieces
import Mountwright.Theme
import Mountwright.ViewModels

// Everything that the screens are made of on one sheet at true size, of the components themselves: whoever changes one
// sees here what it comes to.
Rectangle {
    id: root

    required property Desk desk
    required property double dotsPerMm
    required property bool lamp
    // What stands on it is read from where the bench's screens are read.
    readonly property double distance: Metrics.distance

    color: Theme.ground
    width: Metrics.mm(217)
    height: all.height + Metrics.mm(6)
    Component.onCompleted: {
        Metrics.dotsPerMm = dotsPerMm;
        Theme.lamp = lamp;
    }

    ActionArea {
        anchors.fill: parent

        Column {
            id: all
            x: Metrics.mm(4)
            y: Metrics.mm(3)
            width: root.width - 2 * x
            spacing: Metrics.mm(2)

            Row {
                spacing: Metrics.mm(4)

                Words {
                    id: sheet
                    text: "Specimen"
                    font.bold: true
                }
                ArtworkName {
                    anchors.baseline: sheet.baseline
                    text: root.lamp ? "by lamp" : "by day"
                }
            }
            Section {
                heading: "Type: words in one family, names of artworks in a serif italic"

                StackedNumber {
                    whole: "379.0"
                    unit: "mm"
                    wholeSize: Metrics.figureLarge
                }
                Words {
                    text: "Cut the long strips"
                    font.bold: true
                    font.pixelSize: Metrics.act
                }
                Words {
                    text: "from the cut end, ends square"
                }
                Row {
                    spacing: Metrics.mm(8)

                    Words {
                        text: "corners pencilled 10:12"
                        color: Theme.quiet
                        font.pixelSize: Metrics.label
                    }
                    ArtworkName {
                        text: "Pilot’s chart"
                        font.pixelSize: Metrics.labelName
                    }
                }
                Row {
                    readonly property double distance: Metrics.deskDistance

                    spacing: Metrics.mm(8)

                    Words {
                        text: "Desk: fields and acts"
                        font.bold: true
                        font.pixelSize: Metrics.deskText
                    }
                    Words {
                        text: "the smallest text anywhere"
                        color: Theme.quiet
                        font.pixelSize: Metrics.deskLabel
                    }
                    Words {
                        text: "0123456789 O I l 3/8 5/6"
                        font.bold: true
                        font.pixelSize: Metrics.deskText
                    }
                }
            }
            Section {
                heading: "Figures: whole, fraction, a fraction alone"

                Row {
                    spacing: Metrics.mm(14)

                    StackedNumber {
                        whole: "15"
                        numerator: "1"
                        denominator: "8"
                        unit: "in"
                    }
                    StackedNumber {
                        numerator: "7"
                        denominator: "8"
                        unit: "in"
                    }
                    StackedNumber {
                        whole: "R 93.0"
                        unit: "mm"
                        wholeSize: Metrics.figureLeast
                    }
                }
            }
            Section {
                heading: "Colour, with its contrast on ground, cloth and card as computed"

                Row {
                    spacing: Metrics.mm(13)

                    Swatch {
                        name: "ink"
                        colour: Theme.ink
                    }
                    Swatch {
                        name: "quiet"
                        colour: Theme.quiet
                    }
                    Swatch {
                        name: "worked"
                        colour: Theme.worked
                    }
                    Swatch {
                        name: "calm"
                        colour: Theme.calm
                    }
                    Swatch {
                        name: "pencil"
                        colour: Theme.pencil
                    }
                }
            }
            Section {
                heading: "Keys: raised may be pressed, sunk is pressed or chosen, flat is print"

                KeyStates {
                }
            }
            Section {
                heading: "Cautions: the word, the sign, what happens, how to avoid it"

                CautionBox {
                    width: parent.width
                    shown: true
                    sign: "W022"
                    word: "WARNING"
                    hazard: "blade"
                    says: "A slipping blade cuts deep. Keep fingers well back on the rule."
                }
                CautionBox {
                    width: parent.width
                    shown: true
                    sign: ""
                    word: "NOTICE"
                    hazard: "the artwork"
                    says: "No pen near it. Clean, dry hands."
                }
            }
            Section {
                heading: "Shelf: the outline says the standing, the word says it again"

                Item {
                    width: parent.width
                    height: shelf.height

                    ShelfView {
                        id: shelf
                        width: Metrics.mm(141)
                        height: Metrics.corner
                        shelf: root.desk.shelf
                    }
                }
                Waits {
                }
            }
            Section {
                heading: "Drawing: the piece in its materials, how a board lies, the stages, what an act is in order"

                Row {
                    spacing: Metrics.mm(8)

                    PieceView {
                        width: Metrics.mm(60)
                        height: Metrics.mm(60)
                        drawing: root.desk.bench.drawing
                    }
                    Column {
                        spacing: Metrics.mm(4)

                        Row {
                            spacing: Metrics.mm(3)

                            LieMark {
                                back: false
                            }
                            Words {
                                text: "face up"
                                font.pixelSize: Metrics.label
                            }
                            Item {
                                width: Metrics.mm(10)
                                height: 1
                            }
                            LieMark {
                                back: true
                            }
                            Words {
                                text: "back up"
                                font.pixelSize: Metrics.label
                            }
                        }
                        StageStrip {
                            width: Metrics.mm(120)
                            stages: [3, 3, 4, 2, 1, 0, 0, 0].map(standing => ({
                                        "name": "",
                                        "standing": standing
                                    }))
                        }
                        NumberedLine {
                            width: Metrics.mm(120)
                            number: 1
                            text: "Lay the strip face down."
                        }
                        NumberedLine {
                            width: Metrics.mm(120)
                            number: 2
                            text: "Brush from the middle outwards, past both edges."
                        }
                    }
                }
            }
            Section {
                heading: "Desk: a list of fields, cards of pieces"
                readonly property double distance: Metrics.deskDistance

                Row {
                    spacing: Metrics.mm(8)

                    FieldList {
                        width: Metrics.mm(80)
                        height: Metrics.mm(62)
                        form: root.desk.design
                    }
                    Column {
                        spacing: Metrics.mm(3)

                        Repeater {
                            model: root.desk.pieces

                            PieceCard {
                                width: Metrics.mm(50)
                                height: Metrics.mm(100)
                                pictureHeight: Metrics.mm(56)
                                pixels: (pictureHeight - Metrics.mm(9)) / Math.max(1, pieceHeight)
                            }
                        }
                    }
                }
            }
        }
    }
}
