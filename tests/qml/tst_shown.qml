import QtQuick
import QtTest
import Mountwright.Components
import Mountwright.Theme

// What is only looked at: the shelf, cautions and their signs, the drawing of a piece.
Item {
    id: root
    width: 1000
    height: 700

    ShelfView {
        id: shelf
        width: 900
        height: Metrics.corner
        shelf: demo.shelf
    }
    CautionBox {
        id: caution
        y: 200
        width: 600
        shown: true
        sign: "W022"
        word: "WARNING"
        hazard: "blade"
        says: "Keep the other hand out of its line."
    }
    SafetySign {
        id: sign
        y: 400
        sign: "W022"
    }
    PieceView {
        id: piece
        x: 620
        y: 200
        width: 300
        height: 300
        drawing: demo.bench.drawing
    }
    TestCase {
        name: "Shown"
        when: windowShown

        // How many pixels of an item are not of the colour of its upper left corner.
        function painted(item) {
            const image = grabImage(item);
            let count = 0;
            for (let x = 0; x < item.width; x += 2)
                for (let y = 0; y < item.height; y += 2)
                    count += image.pixel(x, y) !== image.pixel(0, 0) ? 1 : 0;
            return count;
        }
        function test_theShelfSaysThatNothingDriesAndThenWhatDoes() {
            compare(demo.shelf.count, 0);
            verify(stage.workUntilSomethingDries());
            verify(demo.shelf.count > 0);
            tryVerify(() => painted(shelf) > 100);
            compare(shelf.hidden, 0);
            shelf.height = Metrics.mm(9);
            tryVerify(() => demo.shelf.count === 1 || shelf.hidden > 0);
            shelf.height = Metrics.corner;
        }
        function test_aCautionTakesTheRoomItsWordsNeed() {
            const one = caution.height;
            verify(one >= sign.height);
            caution.says = "Keep the other hand out of its line. ".repeat(8);
            tryVerify(() => caution.height > one);
            caution.shown = false;
            compare(caution.height, 0);
            verify(!caution.visible);
            caution.shown = true;
        }
        function test_aCautionWithoutASignHasMoreRoomForItsWords() {
            caution.says = "Short.";
            caution.sign = "";
            tryVerify(() => caution.height < sign.height);
            caution.sign = "W022";
        }
        function test_everySignIsDrawnAndNoTwoAlike_data() {
            return ["W001", "W017", "W021", "W022", "W024", "M004", "M009", "M011", "M016", "M017"].map(one => ({ "tag": one }));
        }
        // What the pixels of an item come to: no two drawings come to the same.
        function sumOf(item) {
            const image = grabImage(item);
            let sum = 0;
            for (let x = 0; x < item.width; x += 2)
                for (let y = 0; y < item.height; y += 2)
                    sum = (sum * 31 + image.red(x, y) + 3 * image.green(x, y) + 7 * image.blue(x, y)) % 1000000007;
            return sum;
        }
        property var seen: []
        function test_everySignIsDrawnAndNoTwoAlike(data) {
            sign.sign = data.tag;
            // It is painted with the next frame.
            tryVerify(() => painted(sign) > 200 && !seen.includes(sumOf(sign)));
            seen.push(sumOf(sign));
        }
        function test_thePieceIsPaintedToFitItsRoom() {
            verify(painted(piece) > 100);
            const middle = piece.onPiece(piece.width / 2, piece.height / 2);
            const right = piece.onPiece(piece.width / 2 + 10, piece.height / 2);
            fuzzyCompare(right.x - middle.x, 10 * piece.mmPerPixel(), 1e-6);
            compare(right.y, middle.y);
        }
    }
}
