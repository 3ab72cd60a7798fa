import QtQuick
import Mountwright.Controls
import Mountwright.Forms
import Mountwright.Theme
import Mountwright.ViewModels

// The form to add to stock or to correct an entry, field by field.
Item {
    id: root

    required property StockViewModel stock
    readonly property bool enters: stock.entering !== FormViewModel.Nothing

    function keepAndGoOn() {
        fields.keepAndGoOn();
    }
    function stepBack() {
        if (enters)
            fields.stepBack();
        else
            stock.closeForm();
    }

    FieldList {
        id: fields
        anchors.top: parent.top
        anchors.bottom: root.enters ? parent.bottom : refused.top
        width: parent.width
        form: root.stock
    }
    Words {
        id: refused
        anchors.bottom: keys.top
        anchors.bottomMargin: Metrics.mm(2)
        width: parent.width
        visible: !root.enters
        text: root.stock.refusal
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    Row {
        id: keys
        anchors.bottom: parent.bottom
        visible: !root.enters
        spacing: Metrics.deskGap

        StockKey {
            offers: ScreenAction {
                name: "closeForm"
                text: qsTr("Back")
                enabled: keys.visible
                onTriggered: root.stock.closeForm()
            }
        }
        StockKey {
            offers: ScreenAction {
                name: "keepForm"
                text: qsTr("Keep it")
                filled: true
                enabled: keys.visible
                onTriggered: root.stock.keepForm()
            }
        }
    }
}
