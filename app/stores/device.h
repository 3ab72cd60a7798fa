#pragma once
// Under which name this machine writes into a record. It lies beside the record and not in it: a record that is copied
// to another machine is written there under that machine's name.
#include <QString>
#include <string>

#include "core/base/message.h"
#include "core/base/result.h"

namespace app::stores {

QString deviceFile(const QString& dataDirectory);

// The name in the folder's file. Where there is none a new one is made and kept: `former`, which records of earlier
// versions held, or one that no machine has had. Of a record that was `made` just now always a new one: under the old
// one numbers have been given that the new record does not know of.
// Errors: data.device-unreadable {path} where the file cannot be read or holds no name, data.device-unkept {path} where
// a new one cannot be written; a former one serves even so.
core::base::Result<std::string, core::base::Message> deviceOf(const QString& dataDirectory, const std::string& former,
                                                              bool made);

}  // namespace app::stores
