pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The chosen entry of the shop's stock, and what can be done with it: the actions that the screen offers at its foot.
Item {
    id: root

    required property StockViewModel stock
    required property ActionArea area

    Column {
        id: told
        width: parent.width
        spacing: Metrics.mm(2)

        Words {
            width: parent.width
            visible: text !== ""
            text: root.stock.chosenTitle
            font.bold: true
            font.pixelSize: Metrics.deskTitle
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.stock.chosenSays
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.stock.chosenServes
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.stock.chosenWarning
            color: Theme.worked
            font.bold: true
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.stock.refusal
            color: Theme.worked
            font.bold: true
            font.pixelSize: Metrics.deskText
        }
    }
    Flow {
        anchors.top: told.bottom
        anchors.topMargin: Metrics.mm(4)
        width: parent.width
        spacing: Metrics.deskGap

        ActionKeys {
            area: root.area
            place: ScreenAction.Foot

            StockKey {
                required property ScreenAction modelData

                offers: modelData
            }
        }
    }
}
