#pragma once
// The shop's materials at the desk: stock, batches and offcuts in one list, the chosen one, and the form in which an
// entry is made or corrected.
#include <QtQml/qqmlregistration.h>
#include <QObject>
#include <QString>
#include <string>
#include <vector>

#include "app/clocks/clock.h"
#include "app/viewmodels/desk/form_view_model.h"
#include "app/viewmodels/shop_appearances.h"
#include "app/workbench/workbench.h"

namespace app::viewmodels {

// The whole name, since the type registrar looks it up from outside.
class StockViewModel : public app::viewmodels::FormViewModel {
  Q_OBJECT
  QML_ELEMENT
  QML_UNCREATABLE("handed down by the program")
  Q_PROPERTY(app::viewmodels::RowsModel* rows READ rows CONSTANT FINAL)
  Q_PROPERTY(bool formOpen READ formOpen NOTIFY changed FINAL)
  Q_PROPERTY(bool canTakeBack READ canTakeBack NOTIFY changed FINAL)
  // These describe the chosen entry; the title is "" for none.
  Q_PROPERTY(QString chosenTitle READ chosenTitle NOTIFY changed FINAL)
  Q_PROPERTY(QString chosenSays READ chosenSays NOTIFY changed FINAL)
  // The pieces under way that could be cut from it; "" for none, and for what is no sheet.
  Q_PROPERTY(QString chosenServes READ chosenServes NOTIFY changed FINAL)
  Q_PROPERTY(QString chosenWarning READ chosenWarning NOTIFY changed FINAL)
  Q_PROPERTY(Sort chosenSort READ chosenSort NOTIFY changed FINAL)
  Q_PROPERTY(bool chosenCounted READ chosenCounted NOTIFY changed FINAL)  // in whole pieces
  Q_PROPERTY(bool chosenLooks READ chosenLooks NOTIFY changed FINAL)  // it is seen on a piece, and may look of its own

 public:
  enum class Sort { Nothing, Item, Batch, Offcut };
  Q_ENUM(Sort)

  StockViewModel(workbench::Workbench& workbench, const clocks::Clock& clock, QObject* parent = nullptr);

  void refresh() override;
  // Sets where the looks of materials are read; it must outlive this.
  void setAppearances(const ShopAppearances& appearances);

  RowsModel* rows() { return &m_rows; }
  bool formOpen() const { return m_form != Form::Closed; }
  bool canTakeBack() const { return !m_lastAct.empty(); }
  QString chosenTitle() const;
  QString chosenSays() const;
  QString chosenServes() const { return m_serves; }
  QString chosenWarning() const;
  Sort chosenSort() const;
  bool chosenCounted() const;
  bool chosenLooks() const;

  Q_INVOKABLE void choose(int row);
  Q_INVOKABLE void enterStock();
  Q_INVOKABLE void enterBatch();
  // Opens the chosen item in the form, to be corrected.
  Q_INVOKABLE void correct();
  Q_INVOKABLE void closeForm();
  // Returns whether the form's entries were recorded; otherwise `refusal` holds the reason.
  Q_INVOKABLE bool keepForm();
  // These change the number of a counted item.
  Q_INVOKABLE void oneMore();
  Q_INVOKABLE void oneLess();
  // Records that an item is no longer stocked, a batch used up or an offcut gone.
  Q_INVOKABLE void gone();
  // Shows how the chosen item looks.
  Q_INVOKABLE void openAppearance();
  // Takes back the last act done here since the program started.
  Q_INVOKABLE void takeBack();

 signals:
  void appearanceAsked(const std::string& item);

 protected:
  const core::base::Value* document() const override { return formOpen() ? &m_document : nullptr; }
  core::base::Message put(const core::base::Value& patch) override;
  QDate today() const override;

 private:
  enum class Form { Closed, Stock, Batch, Correction };
  struct Entry {
    Sort sort = Sort::Nothing;
    std::string id;
    friend bool operator==(const Entry&, const Entry&) = default;
  };
  void openForm(Form form, core::base::Value document);
  QString servesText() const;
  core::intents::StockEntry asItStands() const;
  void putRight(core::intents::StockEntry entry);
  void showForm();
  void ask(const core::intents::ShopIntent& intent);
  const core::shop::StockItem* item() const;
  const core::shop::Batch* batch() const;
  const core::shop::KeptOffcut* offcut() const;

  QString lookTrouble(const std::string& material) const;

  workbench::Workbench& m_workbench;
  const clocks::Clock& m_clock;
  const ShopAppearances* m_appearances = nullptr;
  RowsModel m_rows;
  std::vector<Entry> m_entries;
  Entry m_chosen;
  QString m_serves;
  Form m_form = Form::Closed;
  core::base::Value m_document;
  std::string m_lastAct;
};

}  // namespace app::viewmodels
