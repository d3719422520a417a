"use client";
import { partEvents } from "#lib/mark/index.ts";
import { type Account, type Line, offOf, onOf } from "#lib/procedure/index.ts";
import { useSession } from "../session/provider.tsx";
import { markPart } from "./deeds.ts";
import { Folded } from "./folded.tsx";
import { ToMark } from "./to-mark.tsx";
import { useLedger } from "./use-ledger.ts";

/** The account of every part; what is off stands first, and each has its history below. */
export function Accounts() {
  const { ledger } = useLedger();
  const off = ledger.accounts.filter((account) => offOf(account.now) > 0);
  const rest = ledger.accounts.filter((account) => offOf(account.now) === 0);
  return (
    <>
      <section className="block" aria-labelledby="off-title">
        <h2 id="off-title">Off the machine</h2>
        {off.length === 0 ? (
          <p className="soft">Nothing that the marks know of.</p>
        ) : (
          <Table accounts={off} />
        )}
      </section>
      {rest.length > 0 && (
        <section className="block" aria-labelledby="on-title">
          <h2 id="on-title">On, left out or scrapped</h2>
          <Table accounts={rest} />
        </section>
      )}
    </>
  );
}

function Table({ accounts }: { accounts: Account[] }) {
  return (
    <ul className="lines accounts">
      {accounts.map((account) => (
        <li key={account.item}>
          <Folded
            className="grow"
            summary={
              <>
                <b>{account.name}</b> <span className="soft">{sayPools(account)}</span>
              </>
            }
          >
            {() => <History account={account} />}
          </Folded>
        </li>
      ))}
    </ul>
  );
}

/** "2 off · 1 new · 2 on": only what there is any of. */
function sayPools({ now }: Account): string {
  const parts: [number, string][] = [
    [now.cameOff, "off"],
    [now.fresh, "new"],
    [now.on, "on"],
    [onOf(now) - now.on, "on for a trial"],
    [now.leftOut, "left out"],
    [now.scrapped, "scrapped"],
  ];
  const said = parts.filter(([count]) => count > 0).map(([count, word]) => `${count} ${word}`);
  return said.join(" · ") || "not counted yet";
}

/** Everything that happened to a part, each with its second. */
function History({ account }: { account: Account }) {
  const session = useSession();
  const off = offOf(account.now) > 0;
  return (
    <>
      <ol className="history">
        {account.lines.map((line) => (
          <li key={`${line.event.mark} ${line.act}`}>
            <ToMark mark={line.event.mark} /> {sayLine(line)}
          </li>
        ))}
      </ol>
      {off && (
        <div className="row-of-buttons">
          <button type="button" className="plain" onClick={() => markPart(session, account, "fitted")}>
            Fitted now
          </button>
          <button type="button" className="plain" onClick={() => markPart(session, account, "left out")}>
            Left out on purpose
          </button>
          <button type="button" className="plain" onClick={() => markPart(session, account, "scrapped")}>
            Scrapped
          </button>
        </div>
      )}
    </>
  );
}

function sayLine({ event, moved, gained }: Line): string {
  const label = partEvents.find((one) => one.value === event.event)?.label ?? event.event;
  const { says } = event;
  const numbers = [says.partNumber, says.fittedNumber && `fitted as ${says.fittedNumber}`];
  return [
    `${moved === null ? "" : `${moved} `}${label}${event.stage === "trial fit" ? ", trial fit" : ""}`,
    says.wayRound,
    says.place,
    says.between && `between ${says.between}`,
    says.stack && `in the stack “${says.stack}”${says.stackPlace ? `, place ${says.stackPlace}` : ""}`,
    says.thickness,
    says.stamped && `stamped ${says.stamped}`,
    says.container && `in ${says.container}`,
    ...numbers,
    says.supersedes && `supersedes ${says.supersedes}`,
    says.origin,
    says.source && `from ${says.source}`,
    says.foundWrong && `wrong as found: ${says.foundWrong}`,
    gained.unexplained > 0 && `${gained.unexplained} from nowhere`,
    says.words,
  ]
    .filter(Boolean)
    .join(" · ");
}
