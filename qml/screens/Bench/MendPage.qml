import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme

// How a fault is mended. What has to be done again has come back into the order of work.
CornerFrame {
    id: root

    property string mend: ""

    doneFilled: false

    Column {
        width: parent.width
        spacing: Metrics.mm(5)

        Words {
            width: parent.width
            text: qsTr("Mend it")
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            text: root.mend
        }
        Words {
            width: parent.width
            text: qsTr("What has to be done again comes back by itself.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
