// The record's answer about itself: the chain, followed in slices.

#include <memory>

#include "app/station/trail_record.h"
#include "app/station/trail_tell.h"
#include "core/trail/store/check.h"

namespace bathside::app {
namespace {

/// Follows the chain to where the trail stood when asked, a slice at a time on the store's thread.
class ChainWalk : public std::enable_shared_from_this<ChainWalk> {
public:
    ChainWalk(store::StoreThread& store, QPointer<TrailRecord> guard)
        : m_store(store), m_guard(std::move(guard))
    {
    }

    void queue()
    {
        m_store.run(
            [self = shared_from_this()](store::TrailDb& trail) { self->go(trail); },
            [self = shared_from_this()](const StoreTrouble& trouble) { self->end(trouble); });
    }

private:
    void go(store::TrailDb& trail)
    {
        if (!m_verifier)
            begin(trail);
        if (m_next > m_last) {
            m_agrees = store::projectionsAgree(trail.connection()).value_or(false);
            return end({});
        }
        const Seq to = std::min(m_last, m_next + kSlice - 1);
        const auto read =
            store::readRows(trail.connection(), m_next, to, [this](const store::Row& row) {
                if (row.entry)
                    m_verifier->take(*row.entry);
                else
                    m_verifier->takeUnreadable(
                        row.seq, row.column == "at" ? FlawKind::BadTime : FlawKind::Unreadable,
                        std::string(row.column));
                return true;
            });
        if (!read)
            return end(read.error());
        m_next = to + 1;
        queue();
    }

    void begin(const store::TrailDb& trail)
    {
        m_next = trail.origin().after.seq + 1;
        m_last = trail.head().seq;
        m_verifier.emplace(Expectation{.before = trail.origin().after,
                                       .runs = {},
                                       .witnesses = {trail.head()},
                                       .station = {}});
    }

    void end(const std::optional<StoreTrouble>& trouble)
    {
        ui::VerifyAnswer answer{.chain = m_verifier ? m_verifier->finish() : Verification{},
                                .indexesAgree = m_agrees,
                                .trouble = trouble};
        tell(m_guard, [answer](TrailRecord& record) { emit record.verified(answer); });
    }

    store::StoreThread& m_store;
    QPointer<TrailRecord> m_guard;
    std::optional<Verifier> m_verifier;
    std::optional<bool> m_agrees;
    Seq m_next = 0, m_last = 0;
};

}  // namespace

void TrailRecord::verify()
{
    std::make_shared<ChainWalk>(m_session.store(), QPointer<TrailRecord>(this))->queue();
}

}  // namespace bathside::app
