pragma Singleton
import QtQml
import Mountwright.ViewModels

// What every drawing of a piece has to know of the shop.
QtObject {
    // How materials look that have a look of their own.
    property pieceAppearances appearances
}
