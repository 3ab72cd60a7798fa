pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The number in hand, opened in a card's list: its name and itself, as large as there is room; or all that a cutter is set
// to. A bar at its left says which it is.
Item {
    id: root

    required property FigureViewModel figure
    // All of the list.
    required property var settings
    // The height it may take, and how many of the list have no line of their own.
    property double room: 0
    property int more: 0
    readonly property double indent: Metrics.mm(2.4)
    readonly property double margin: Metrics.mm(0.5)
    // The share of a line's height that its neighbour may take; of the letters themselves, from their foot and in all.
    readonly property double air: 0.28
    readonly property double ascent: letters.ascent / Metrics.figureLarge
    readonly property double tall: letters.height / Metrics.figureLarge
    readonly property bool ofCutter: inHand.length > 0 && inHand[0].ofCutter
    readonly property var inHand: {
        const all = [];
        for (const one of settings) {
            if (one.now)
                all.push(one);
        }
        return all;
    }

    function heightOf(size: int, fraction: bool): double {
        return Math.ceil((tall + (fraction ? 0.04 : 0)) * size - air * (Metrics.text + Metrics.label));
    }

    height: (ofCutter ? cutter.height : single.height) + 2 * margin

    Rectangle {
        y: Metrics.mm(1)
        width: Metrics.mm(1.4)
        height: parent.height - Metrics.mm(1.5)
        color: Theme.ink
    }
    Column {
        id: single
        x: root.indent + Metrics.mm(1.4)
        y: root.margin
        width: root.width - x
        visible: !root.ofCutter

        Item {
            width: parent.width
            height: Math.ceil(names.height)

            Words {
                id: name
                objectName: "what"
                text: root.figure.what
                font.bold: true
                // Beside it stands how many have no room.
                font.pixelSize: names.advanceWidth(text) + (root.more > 0 ? Metrics.mm(20) : 0) > parent.width ? Metrics.label : Metrics.text
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
            Words {
                objectName: "moreBeside"
                anchors.right: parent.right
                anchors.baseline: name.baseline
                visible: root.more > 0 && name.implicitWidth + implicitWidth + Metrics.mm(3) <= parent.width
                text: qsTr("%1 more").arg(root.more)
                color: Theme.quiet
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
            }
        }
        // The air that letters have above and below them is more than a number this large needs.
        Item {
            width: parent.width
            readonly property double base: number.y + root.ascent * number.wholeSize
            height: root.heightOf(number.wholeSize, number.fraction)

            StepNumber {
                id: number
                readonly property string digits: root.figure.sign + root.figure.whole

                // As it comes out in letters of that size, with its unit.
                function reach(size: int): double {
                    const stack = fraction ? Math.max(numerator.length, denominator.length) * 0.36 + 0.12 : 0;
                    return letters.advanceWidth(digits) * size / Metrics.figureLarge + (stack + 0.12) * size + names.advanceWidth(unit);
                }
                objectName: "number"
                y: -root.air * Metrics.text
                figure: root.figure
                wholeSize: {
                    for (const size of [Metrics.figureLarge, Metrics.figure]) {
                        if (reach(size) <= parent.width && Math.ceil(names.height) + 2 * root.margin + root.heightOf(size, fraction) <= root.room)
                            return size;
                    }
                    return Metrics.figureLeast;
                }
            }
            Words {
                objectName: "twin"
                anchors.right: parent.right
                y: parent.base - baselineOffset
                visible: text !== "" && number.width + implicitWidth + Metrics.mm(3) <= parent.width
                text: root.figure.twin
                color: Theme.quiet
                font.pixelSize: number.width + names.advanceWidth(text) + Metrics.mm(3) <= parent.width ? Metrics.text : Metrics.label
                wrapMode: Text.NoWrap
                lineHeight: 1
            }
        }
    }
    Column {
        id: cutter
        x: root.indent + Metrics.mm(1.4)
        y: root.margin
        width: root.width - x
        visible: root.ofCutter

        Repeater {
            model: root.ofCutter ? root.inHand : []

            Item {
                id: one
                required property var modelData

                width: cutter.width
                height: value.height

                Words {
                    anchors.baseline: value.baseline
                    text: one.modelData.name
                    font.bold: true
                    font.pixelSize: Metrics.label
                    wrapMode: Text.NoWrap
                }
                Words {
                    id: value
                    objectName: "ofCutter"
                    anchors.right: parent.right
                    text: one.modelData.value
                    color: Theme.worked
                    font.bold: true
                    font.pixelSize: root.inHand.length * names.height > root.room ? Metrics.label : Metrics.text
                    wrapMode: Text.NoWrap
                    lineHeight: 1
                }
            }
        }
    }
    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.figureLarge
    }
    FontMetrics {
        id: names
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.text
    }
}
