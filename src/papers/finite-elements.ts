// The section as a script for FreeFem++, a general-purpose open package for meshes and finite elements: geometry,
// permittivities and potentials, so that anyone can check the field with other means. It prints the matrix of
// capacitances over the permittivity of vacuum, and the energy at the potentials of the first case. Millimetres, volts.
//
// Every wire stands back by 0.4 um all round, for that package's mesher cannot join a circle that touches a line. Wires
// and their covers are circles, everything else level and upright lines, cut where they meet.

import type { Box, Disc, FieldSection } from '#field/field-section.ts';
import { outlineCuts, type CutLine } from './outline-cuts.ts';

const BACK = 0.0004;

/** `volts` of each electrode; `around`: points round a wire. Plane sections only. */
export function finiteElementScript(section: FieldSection, volts: Float64Array, around = 40): string {
  const discs = section.bodies.filter((body): body is Disc => body.shape === 'disc');
  const boxes = section.bodies.filter((body): body is Box => body.shape === 'box');
  const lines = outlineCuts(section, boxes);
  // circles first, then lines: a label for every electrode, 1 more than its number; 0 holds nothing
  return [
    '// one volt on each conductor in turn; lengths in mm, capacitances over the permittivity of vacuum',
    discArrays(discs, around),
    lineArrays(lines),
    'border W(t=0,2*pi;i){x=cx[i]+cr[i]*cos(t);y=cy[i]+cr[i]*sin(t);label=cl[i];}',
    'border V(t=0,2*pi;i){x=cx[i]+co[i]*cos(t);y=cy[i]+co[i]*sin(t);label=0;}',
    'border L(t=0,1;i){x=ax[i]+t*(bx[i]-ax[i]);y=ay[i]+t*(by[i]-ay[i]);label=al[i];}',
    'mesh Th=buildmesh(W(cn)+V(cn)+L(an),nbvx=2000000);',
    materials(section, discs, boxes),
    conductors(section, volts),
    SOLVE,
  ].join('\n');
}

const num = (value: number): string => `${Number(value.toFixed(7))}`;
const list = (type: string, name: string, values: readonly number[]): string =>
  values.length === 0 ? `${type}[int] ${name}(0);` : `${type}[int] ${name}=[${values.map(num).join(',')}];`;

function discArrays(discs: readonly Disc[], around: number): string {
  const mm = (value: number) => value / 1e6;
  return [
    list(
      'real',
      'cx',
      discs.map(({ x }) => mm(x)),
    ),
    list(
      'real',
      'cy',
      discs.map(({ y }) => mm(y)),
    ),
    list(
      'real',
      'cr',
      discs.map(({ metal, overall }) => radiusOf(metal, overall)),
    ),
    list(
      'real',
      'co',
      discs.map(({ overall }) => mm(overall) / 2 - BACK),
    ),
    list(
      'int',
      'cl',
      discs.map(({ electrode }) => electrode + 1),
    ),
    list(
      'int',
      'cn',
      discs.map(() => around),
    ),
  ].join('\n');
}

/** A bare wire has a cover as thin as it stands back. */
const radiusOf = (metal: number, overall: number): number => Math.min(metal / 2e6, overall / 2e6 - 2 * BACK);

function lineArrays(lines: readonly CutLine[]): string {
  return [
    list(
      'real',
      'ax',
      lines.map(({ from }) => from[0]),
    ),
    list(
      'real',
      'ay',
      lines.map(({ from }) => from[1]),
    ),
    list(
      'real',
      'bx',
      lines.map(({ to }) => to[0]),
    ),
    list(
      'real',
      'by',
      lines.map(({ to }) => to[1]),
    ),
    list(
      'int',
      'al',
      lines.map(({ electrode }) => (electrode ?? -1) + 1),
    ),
    list(
      'int',
      'an',
      lines.map(({ pieces }) => pieces),
    ),
  ].join('\n');
}

/** A place in every cover and every solid tells which of the mesh's regions it is. */
function materials(section: FieldSection, discs: readonly Disc[], boxes: readonly Box[]): string {
  const solid = boxes.filter(({ electrode }) => electrode === null);
  const places: readonly (readonly [number, number, number])[] = [
    ...discs.map((disc) => {
      const ring = (radiusOf(disc.metal, disc.overall) + disc.overall / 2e6 - BACK) / 2;
      return [
        disc.x / 1e6 + ring * Math.SQRT1_2,
        disc.y / 1e6 + ring * Math.SQRT1_2,
        disc.permittivity,
      ] as const;
    }),
    ...solid.map((box) => [(box.x0 + box.x1) / 2e6, (box.y0 + box.y1) / 2e6, box.permittivity] as const),
  ];
  return [
    list(
      'real',
      'mx',
      places.map(([x]) => x),
    ),
    list(
      'real',
      'my',
      places.map(([, y]) => y),
    ),
    list(
      'real',
      'me',
      places.map(([, , e]) => e),
    ),
    'int most=0;for(int k=0;k<Th.nt;k++)most=max(most,Th[k].region);',
    `real[int] ofRegion(most+1);ofRegion=${num(section.background)};`,
    'for(int k=0;k<mx.n;k++)ofRegion[Th(mx[k],my[k]).region]=me[k];',
    'fespace P0h(Th,P0);P0h eps=ofRegion[region];',
  ].join('\n');
}

function conductors({ conductors: names, electrodes }: FieldSection, volts: Float64Array): string {
  return [
    ...names.map((name, i) => `// conductor ${i}: ${name.replace(/[^\w -]/g, '_')}`),
    list('int', 'ofElectrode', electrodes),
    list(
      'int',
      'labels',
      electrodes.map((_, i) => i + 1),
    ),
    list('real', 'atWork', [...volts]),
    `int conductors=${names.length};`,
  ].join('\n');
}

const SOLVE = `fespace Vh(Th,P2);
varf field(u,v)=int2d(Th)(eps*(dx(u)*dx(v)+dy(u)*dy(v)));
varf held(u,v)=int2d(Th)(eps*(dx(u)*dx(v)+dy(u)*dy(v)))+on(labels,u=0);
matrix A=field(Vh,Vh);
matrix S=held(Vh,Vh,solver=sparsesolver);
real[int,int] all(Vh.ndof,conductors);
real[int] s(Vh.ndof),g(Vh.ndof);
for(int c=0;c<conductors;c++){
  varf one(u,v)=on(labels,u=1.*(ofElectrode[label-1]==c));
  real[int] b=one(0,Vh);
  s=S^-1*b;
  all(:,c)=s;
}
cout.precision(10);
for(int c=0;c<conductors;c++){
  s=all(:,c);
  g=A*s;
  for(int e=0;e<=c;e++){
    real[int] w=all(:,e);
    cout<<"C "<<c<<" "<<e<<" "<<(g'*w)<<endl;
  }
}
varf work(u,v)=on(labels,u=atWork[label-1]);
real[int] bw=work(0,Vh);
s=S^-1*bw;
g=A*s;
cout<<"energy "<<(g'*s)/2<<endl;
cout<<"points "<<Th.nv<<" unknowns "<<Vh.ndof<<endl;
`;
