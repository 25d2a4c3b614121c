# What may stand in one place only: SQL, the time, colours; and what may stand nowhere.
include(${CMAKE_CURRENT_LIST_DIR}/support/fence.cmake)

set(hex "[0-9a-fA-F]")

fence(sql-in-the-store "SQL stands in core/trail/store"
  IN core ui app BUT core/trail/store
  MATCH "\"[^\"\n]*(SELECT [^\"\n]* FROM |INSERT INTO |DELETE FROM |UPDATE [a-z_]+ SET |CREATE (TABLE|INDEX|TRIGGER)|DROP |PRAGMA |VACUUM)")
fence(time-from-the-port "only app/system asks what time it is; everybody else has a Clock"
  IN core ui app BUT app/system ui/sound core/trail/store
  MATCH "system_clock::now|steady_clock|high_resolution_clock|QDateTime::current|QDate::current|QTime::current|QElapsedTimer|QDeadlineTimer|clock_gettime|gettimeofday|[^A-Za-z0-9_.>:]time\\((nullptr|NULL|0)|std::time\\(")
fence(store-waits-only "the store's thread measures how long a write has waited, and asks for no other time"
  IN core/trail/store
  MATCH "system_clock::now|high_resolution_clock|QDateTime::current|QDate::current|QTime::current|clock_gettime|gettimeofday|time\\((nullptr|NULL|0)")
fence(no-sleeping "waiting is for a clock, a signal or an event"
  IN core ui app tests/core tests/ui BUT tests/ui/sound
  MATCH "sleep_for|sleep_until|[^A-Za-z_]u?sleep\\(|QThread::[mu]?sleep|nanosleep|QTest::q(Sleep|Wait)\\(")
fence(colours-in-the-theme "colours stand in ui/theme"
  IN core ui app BUT ui/theme
  MATCH "\"#${hex}${hex}${hex}(${hex}${hex}${hex})?[\";]|#${hex}${hex}${hex}${hex}${hex}${hex}|QColor\\([ ]*([0-9\"Q]|u\")|qRgba?\\(|Qt::(white|black|red|green|blue|yellow|cyan|magenta|gray|dark[A-Z]|light[A-Z])")
fence(nothing-modal "no dialog stops the bench: ask in place"
  IN ui MATCH "(\\.|->|::)exec\\(|QMessageBox|QInputDialog|QFileDialog|QDialog|QEventLoop")
fence(words-in-ui "core gives enums and numbers; ui/text has the words"
  IN core MATCH "[^A-Za-z0-9_]tr\\(|QT_TR_NOOP|QCoreApplication::translate")
fence(nothing-left-open "say what is missing in an issue, and switch no test off"
  IN core ui app tests FILES *.h *.cpp *.txt *.cmake run
  MATCH "TO[D]O|FIX[M]E|[^X]X[X]X[^X]|GTEST_SK[I]P|DISABL[E]D_|QSK[I]P")
fence(no-place-of-one-machine "folders are found or given, never written down"
  IN core ui app tests FILES *.h *.cpp *.txt *.cmake run
  MATCH "[^A-Za-z0-9_.}/](/hom[e]/|/roo[t]/|/tm[p]/|/wor[k]/)")
