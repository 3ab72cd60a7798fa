import QtQuick
import Mountwright.Theme

// A key of the desk's usual size.
TouchKey {
    width: Metrics.mm(40)
    height: Metrics.mm(13)
    legendSize: Metrics.deskText
}
