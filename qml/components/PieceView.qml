import QtQuick
import Mountwright.Theme
import Mountwright.ViewModels

PieceItem {
    appearances: Shop.appearances
    ink: Theme.ink
    pencil: Theme.pencil
    worked: Theme.worked
    ground: Theme.ground
    cloth: Theme.cloth
    hairline: Metrics.hairline
}
